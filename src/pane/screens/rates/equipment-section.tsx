import { makeStyles, tokens } from "@fluentui/react-components";
import { CheckmarkCircle16Filled, ErrorCircle16Filled } from "@fluentui/react-icons";
import type { EquipmentView } from "../../model/equipment-view";
import { Facts } from "../../parts/facts";
import { Fold } from "../../parts/fold";
import { Panel } from "../../parts/panel";
import { useShared } from "../../parts/styles";
import { Working } from "./working";

const useStyles = makeStyles({
  item: {
    display: "flex",
    flexDirection: "column",
    gap: tokens.spacingVerticalXS,
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
    paddingTop: tokens.spacingVerticalS,
  },
  title: { margin: 0, fontSize: "inherit", fontWeight: tokens.fontWeightSemibold },
  verdict: { display: "flex", alignItems: "center", gap: tokens.spacingHorizontalXS },
  met: { color: tokens.colorStatusSuccessForeground1, flexShrink: 0 },
  unmet: { color: tokens.colorStatusDangerForeground1, flexShrink: 0 },
});

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
  const styles = useStyles();
  const shared = useShared();
  const isKnown = !("problem" in outcome);
  return (
    <div className={styles.item}>
      <div className={shared.spread}>
        <h4 className={styles.title}>{title}</h4>
        {isKnown && outcome.verdict !== "" ? (
          <span className={styles.verdict}>
            {outcome.isMet ? (
              <CheckmarkCircle16Filled className={styles.met} aria-hidden />
            ) : (
              <ErrorCircle16Filled className={styles.unmet} aria-hidden />
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
