import { InputError } from "../cells";
import { efficacyRules, type FanKind, findRule, type System, UnknownNameError } from "../editions";
import { flowUnit } from "./room-rate";
import { type Ruling, statedIn } from "./ruling";

/**
 * The least flow for each watt that a code asks of a kind of fan, cfm/W.
 *
 * `flow` is the rated flow, needed where the code has rows by flow.
 */
export function leastEfficacy(
  code: string,
  fan: FanKind,
  flow: number | undefined,
  system: System,
): Ruling<number> {
  const rule = findRule("fan efficacy", efficacyRules, code);
  const own = rule.rows.filter((row) => row.fan === fan);
  if (own.length === 0) {
    const known = [...new Set(rule.rows.map((row) => row.fan))].join(", ");
    throw new UnknownNameError(`${rule.code} sets no efficacy of a ${fan} fan: it has ${known}`);
  }
  for (const { least } of own) statedIn(least, system, rule.code);
  const byFlow = own.length > 1;
  if (byFlow && flow === undefined)
    throw new InputError(
      `${rule.code} sets the efficacy of a ${fan} fan by its flow: give the rated flow`,
    );
  const row = own.find(
    ({ from = 0, below = Number.POSITIVE_INFINITY }) =>
      !byFlow || ((flow ?? 0) >= from && (flow ?? 0) < below),
  );
  if (!row)
    throw new InputError(
      `flow ${flow}: ${rule.code} sets the efficacy of a ${fan} fan from ${own[0]?.from} ${flowUnit("ip")} on`,
    );
  const value = statedIn(row.least, system, rule.code);
  const limits = [
    ...(row.from === undefined ? [] : [`from ${row.from} cfm`]),
    ...(row.below === undefined ? [] : [`below ${row.below} cfm`]),
  ];
  return {
    value,
    source: row.source,
    working: [`${value} cfm/W`, `${fan} fan`, ...limits].join(", "),
  };
}
