import { makeStyles, tokens } from "@fluentui/react-components";
import { type JobCheck, provenanceOf } from "../../../job";
import { provenanceView } from "../../model/provenance-view";
import { Panel } from "../../parts/panel";
import { useShared } from "../../parts/styles";

const useStyles = makeStyles({
  list: { margin: 0, display: "flex", flexDirection: "column", gap: tokens.spacingVerticalS },
  value: { margin: 0, overflowWrap: "anywhere" },
  name: { color: tokens.colorNeutralForeground2, fontSize: tokens.fontSizeBase200 },
});

/** What the results of the check rest on. */
export function ProvenancePanel({ check }: { check: JobCheck }) {
  const styles = useStyles();
  const shared = useShared();
  return (
    <Panel title="What this check rests on">
      <dl className={styles.list}>
        {provenanceView(provenanceOf(check.job)).map(({ name, value, note }) => (
          <div key={`${name} ${value}`}>
            <dt className={styles.name}>{name}</dt>
            <dd className={styles.value}>{value}</dd>
            {note === "" ? null : <dd className={shared.muted}>{note}</dd>}
          </div>
        ))}
      </dl>
    </Panel>
  );
}
