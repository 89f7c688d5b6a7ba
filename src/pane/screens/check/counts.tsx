import { makeStyles, mergeClasses, ToggleButton, tokens } from "@fluentui/react-components";
import { type Severity, severities } from "../../../job";
import { countOf } from "../../model/announce";
import { SeverityIcon } from "../../parts/severity-icon";
import { useShared } from "../../parts/styles";

const useStyles = makeStyles({
  counts: {
    display: "grid",
    gridTemplateColumns: "repeat(auto-fit, minmax(96px, 1fr))",
    gap: tokens.spacingHorizontalXS,
  },
  count: { minWidth: 0, paddingLeft: "4px", paddingRight: "4px", whiteSpace: "nowrap" },
});

interface CountsProps {
  readonly bySeverity: Readonly<Record<Severity, number>>;
  readonly chosen: readonly Severity[];
  readonly onChoose: (chosen: readonly Severity[]) => void;
}

/** How many of each severity; pressing one shows it alone or with others pressed. */
export function Counts({ bySeverity, chosen, onChoose }: CountsProps) {
  const styles = useStyles();
  const shared = useShared();
  return (
    <fieldset className={mergeClasses(shared.bare, styles.counts)} aria-label="Show only">
      {severities.map((severity) => {
        const pressed = chosen.includes(severity);
        return (
          <ToggleButton
            key={severity}
            size="small"
            className={mergeClasses(styles.count, pressed && shared.pressed)}
            checked={pressed}
            icon={<SeverityIcon severity={severity} />}
            onClick={() =>
              onChoose(
                pressed ? chosen.filter((entry) => entry !== severity) : [...chosen, severity],
              )
            }
          >
            {countOf(severity, bySeverity[severity])}
          </ToggleButton>
        );
      })}
    </fieldset>
  );
}
