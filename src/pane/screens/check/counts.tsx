import { makeStyles, mergeClasses, ToggleButton, tokens } from "@fluentui/react-components";
import { type Severity, severities } from "../../../job";
import { SeverityIcon } from "../../parts/severity-icon";

const useStyles = makeStyles({
  counts: {
    display: "grid",
    gridTemplateColumns: "repeat(auto-fit, minmax(88px, 1fr))",
    gap: tokens.spacingHorizontalXS,
    margin: 0,
    padding: 0,
    border: "none",
    minWidth: 0,
  },
  pressed: {
    backgroundColor: tokens.colorBrandBackground2,
    boxShadow: `inset 0 0 0 1px ${tokens.colorBrandStroke1}`,
    fontWeight: tokens.fontWeightSemibold,
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
  return (
    <fieldset className={styles.counts} aria-label="Show only">
      {severities.map((severity) => {
        const pressed = chosen.includes(severity);
        return (
          <ToggleButton
            key={severity}
            size="small"
            className={mergeClasses(styles.count, pressed && styles.pressed)}
            checked={pressed}
            icon={<SeverityIcon severity={severity} />}
            onClick={() =>
              onChoose(
                pressed ? chosen.filter((entry) => entry !== severity) : [...chosen, severity],
              )
            }
          >
            {bySeverity[severity]} {severity}
          </ToggleButton>
        );
      })}
    </fieldset>
  );
}
