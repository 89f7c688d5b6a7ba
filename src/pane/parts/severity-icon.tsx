import {
  CircleHint20Regular,
  ErrorCircle20Filled,
  Gauge20Regular,
  Warning20Filled,
} from "@fluentui/react-icons";
import type { Severity } from "../../job";
import { useShared } from "./styles";

const icons = {
  wrong: ErrorCircle20Filled,
  doubtful: Warning20Filled,
  missing: CircleHint20Regular,
  result: Gauge20Regular,
} as const satisfies Record<Severity, unknown>;

const looks = {
  wrong: "bad",
  doubtful: "doubt",
  missing: "quiet",
  result: "quiet",
} as const satisfies Record<Severity, unknown>;

/** A shape of its own for each severity; the word stands beside it or is said. */
export function SeverityIcon({ severity, said }: { severity: Severity; said?: boolean }) {
  const Icon = icons[severity];
  const { [looks[severity]]: className } = useShared();
  return said ? (
    <Icon className={className} role="img" aria-label={severity} />
  ) : (
    <Icon className={className} aria-hidden />
  );
}
