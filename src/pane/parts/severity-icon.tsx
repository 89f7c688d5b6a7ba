import { makeStyles, tokens } from "@fluentui/react-components";
import {
  CircleHint20Regular,
  ErrorCircle20Filled,
  Gauge20Regular,
  Warning20Filled,
} from "@fluentui/react-icons";
import type { Severity } from "../../job";

const useStyles = makeStyles({
  wrong: { color: tokens.colorStatusDangerForeground1, flexShrink: 0 },
  doubtful: { color: tokens.colorStatusWarningForeground3, flexShrink: 0 },
  missing: { color: tokens.colorNeutralForeground2, flexShrink: 0 },
  result: { color: tokens.colorNeutralForeground2, flexShrink: 0 },
});

const icons = {
  wrong: ErrorCircle20Filled,
  doubtful: Warning20Filled,
  missing: CircleHint20Regular,
  result: Gauge20Regular,
} as const satisfies Record<Severity, unknown>;

/** A shape of its own for each severity; the word stands beside it or is said. */
export function SeverityIcon({ severity, said }: { severity: Severity; said?: boolean }) {
  const Icon = icons[severity];
  const { [severity]: className } = useStyles();
  return said ? (
    <Icon className={className} role="img" aria-label={severity} />
  ) : (
    <Icon className={className} aria-hidden />
  );
}
