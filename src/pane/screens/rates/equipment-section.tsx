import { CheckmarkCircle16Filled, ErrorCircle16Filled } from "@fluentui/react-icons";
import type { EquipmentView } from "../../model/equipment-view";
import { Facts } from "../../parts/facts";
import { Fold } from "../../parts/fold";
import { Panel } from "../../parts/panel";
import { useShared } from "../../parts/styles";
import { Working } from "./working";

/** What the job's rules ask of a fan besides its flow. */
export function EquipmentSection({ views }: { views: readonly EquipmentView[] }) {
  return (
    <Panel title="Equipment">
      {views.map((view) => (
        <Demand key={view.title} view={view} />
      ))}
    </Panel>
  );
}

function Demand({ view: { title, own, outcome } }: { view: EquipmentView }) {
  const shared = useShared();
  const isKnown = !("problem" in outcome);
  return (
    <div className={shared.ruled}>
      <div className={shared.spread}>
        <h4 className={shared.title}>{title}</h4>
        {isKnown && outcome.verdict !== "" ? (
          <span className={shared.withIcon}>
            {outcome.isMet ? (
              <CheckmarkCircle16Filled className={shared.good} aria-hidden />
            ) : (
              <ErrorCircle16Filled className={shared.bad} aria-hidden />
            )}
            {outcome.verdict}
          </span>
        ) : null}
      </div>
      <Facts
        facts={[
          ...(isKnown ? [{ name: "Asked", value: outcome.asked }] : []),
          { name: "Here", value: own },
        ]}
      />
      {isKnown ? (
        <Fold title="By which rule">
          <Working lines={outcome.working} clauses={outcome.clauses} />
        </Fold>
      ) : (
        <p className={shared.muted}>{outcome.problem}</p>
      )}
    </div>
  );
}
