import { type JobCheck, provenanceOf } from "../../../job";
import { provenanceView } from "../../model/provenance-view";
import { Panel } from "../../parts/panel";
import { useShared } from "../../parts/styles";

/** What the results of the check rest on. */
export function ProvenancePanel({ check }: { check: JobCheck }) {
  const shared = useShared();
  return (
    <Panel title="What this check rests on">
      <dl className={shared.figure}>
        {provenanceView(provenanceOf(check.job)).map(({ name, value, note }) => (
          <div key={`${name} ${value}`}>
            <dt className={shared.muted}>{name}</dt>
            <dd className={shared.text}>{value}</dd>
            {note === "" ? null : <dd className={shared.muted}>{note}</dd>}
          </div>
        ))}
      </dl>
    </Panel>
  );
}
