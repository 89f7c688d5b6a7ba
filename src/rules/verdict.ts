import { type Column, columns } from "../algebra";
import { InputError } from "../cells";
import { meetsCode } from "../formulas";
import { chanceMet } from "../spread";
import { type RangeStatus, rangeStatuses } from "./range-status";

export const verdicts = ["meets", "short", "too close to call", "retest", "not measured"] as const;
export type Verdict = (typeof verdicts)[number];

/** Guarded acceptance (JCGM 106:2012, 8.3.2): what a flow may be off by, and how sure to be. */
export interface Guard {
  /** Standard spread of each flow, in its unit, 0 or more; NaN leaves that row to simple acceptance. */
  readonly spread: Column;
  /** The chance that has to be reached, from 0.5 to below 1; the usual one where NaN. */
  readonly chance: Column;
}

/** The chance asked for where a guard names none. */
export const usualGuardChance = 0.95;

/** Rounding may put a flow at the very acceptance limit a hair below its chance. */
const hair = 1e-12;

/**
 * Whether each flow meets its required rate.
 *
 * Without a guard by simple acceptance: no tolerance below the rate. With one, a flow "meets" when
 * the chance that it truly meets the rate reaches the guard's, is "short" when the chance that it
 * does not reaches it, and else is "too close to call".
 *
 * A NaN flow is "not measured"; a range status other than "in range" is "retest"; undefined where
 * only the required rate is unknown.
 */
export function verdictColumn(
  flow: Column,
  required: Column,
  length: number,
  status?: readonly (RangeStatus | undefined)[],
  guard?: Guard,
): (Verdict | undefined)[] {
  const meets = columns(meetsCode, { Q: flow, R: required }, length);
  const out = new Array<Verdict | undefined>(length);
  for (let i = 0; i < length; i++) {
    const q = at(flow, i);
    const s = status?.[i];
    const r = at(required, i);
    const u = guard ? at(guard.spread, i) : Number.NaN;
    if (Number.isNaN(q)) out[i] = "not measured";
    else if (s !== undefined && s !== "in range") out[i] = "retest";
    else if (Number.isNaN(r)) continue;
    else if (guard && !Number.isNaN(u)) out[i] = guarded(chanceMet(q, u, r), at(guard.chance, i));
    else out[i] = meets[i] ? "meets" : "short";
  }
  return out;
}

function guarded(chance: number, given: number): Verdict {
  const asked = Number.isNaN(given) ? usualGuardChance : given;
  if (chance >= asked - hair) return "meets";
  return chance <= 1 - asked + hair ? "short" : "too close to call";
}

function at(column: Column, i: number): number {
  return typeof column === "number" ? column : (column[i] as number);
}

/** The range status of this name; undefined for blank. Throws with the known ones. */
export function readStatus(text: string): RangeStatus | undefined {
  const wanted = text.trim().toLowerCase();
  if (wanted === "") return undefined;
  const found = rangeStatuses.find((status) => status === wanted);
  if (!found)
    throw new InputError(`unknown range status "${text}": use one of ${rangeStatuses.join(", ")}`);
  return found;
}
