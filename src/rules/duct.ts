import { oneValue } from "../algebra";
import { InputError } from "../cells";
import { type DuctKind, ductRules, findRule, type System } from "../editions";
import { ductLeft } from "../formulas";
import { type Ruling, statedIn, worked } from "./ruling";

export interface Duct {
  readonly kind: DuctKind;
  /** Inches. */
  readonly diameter: number;
  /** The fan's rated flow at 0.25 in w.c., cfm. */
  readonly ratedFlow: number;
  readonly elbows: number;
}

/**
 * The longest duct that a fan may have, ft, "no limit" or "not allowed".
 *
 * A flow between two columns counts as the higher, a diameter between two rows as the smaller. Once
 * the installed flow has been measured (`measured`) the length is free.
 */
export function longestDuct(
  code: string,
  duct: Duct,
  system: System,
  measured = false,
): Ruling<number | "no limit" | "not allowed"> {
  const rule = findRule("duct lengths", ductRules, code);
  statedIn({ ip: rule.elbow }, system, rule.code);
  const { kind, diameter, ratedFlow, elbows } = duct;
  if (!(diameter > 0)) throw new InputError(`diameter ${diameter}: give a number above 0`);
  if (!(ratedFlow > 0)) throw new InputError(`ratedFlow ${ratedFlow}: give a number above 0`);
  if (!Number.isInteger(elbows) || elbows < 0)
    throw new InputError(`elbows ${elbows}: give a whole number, 0 or more`);
  if (measured)
    return {
      value: "no limit",
      source: rule.waivedByMeasuring.source,
      working: "the installed flow is measured: the table does not apply",
    };
  const column = rule.ratedFlows.findIndex((flow) => ratedFlow <= flow);
  if (column < 0)
    throw new InputError(
      `ratedFlow ${ratedFlow}: ${rule.source.work} ${rule.source.clause} ends at ${rule.ratedFlows.at(-1)} cfm: measure the installed flow instead`,
    );
  const row = rule.rows.findLast((entry) => entry.duct === kind && entry.diameter <= diameter);
  const length = row?.lengths[column] ?? 0;
  const source = row?.source ?? rule.source;
  const place = `${kind} duct of ${diameter} in, column of ${rule.ratedFlows[column]} cfm`;
  if (length === 0) return { value: "not allowed", source, working: `${place}: not allowed` };
  if (length === Number.POSITIVE_INFINITY)
    return { value: "no limit", source, working: `${place}: no limit` };
  const given = { L0: length, e: rule.elbow, n: Math.max(0, elbows - (rule.freeElbows ?? 0)) };
  const left = oneValue(ductLeft, given);
  return {
    value: left > 0 ? left : "not allowed",
    source,
    working: `${place}: ${length} ft; ${worked(ductLeft, given, "ip")}`,
  };
}
