import { type Column, columns } from "../../algebra";
import { meetsCode } from "../../formulas";
import { type RangeStatus, rangeStatuses } from "./range-status";

export const verdicts = ["meets", "short", "retest", "not measured"] as const;
export type Verdict = (typeof verdicts)[number];

/**
 * Whether each flow meets its required rate, by simple acceptance (no tolerance below the rate).
 * A NaN flow is "not measured"; a range status other than "in range" is "retest"; undefined where
 * only the required rate is unknown.
 */
export function verdictColumn(
  flow: Column,
  required: Column,
  length: number,
  status?: readonly (RangeStatus | undefined)[],
): (Verdict | undefined)[] {
  const meets = columns(meetsCode, { Q: flow, R: required }, length);
  const out = new Array<Verdict | undefined>(length);
  for (let i = 0; i < length; i++) {
    const q = typeof flow === "number" ? flow : (flow[i] as number);
    const s = status?.[i];
    const r = typeof required === "number" ? required : (required[i] as number);
    if (Number.isNaN(q)) out[i] = "not measured";
    else if (s !== undefined && s !== "in range") out[i] = "retest";
    else if (!Number.isNaN(r)) out[i] = meets[i] ? "meets" : "short";
  }
  return out;
}

/** The range status of this name; undefined for blank. Throws with the known ones. */
export function readStatus(text: string): RangeStatus | undefined {
  const wanted = text.trim().toLowerCase();
  if (wanted === "") return undefined;
  const found = rangeStatuses.find((status) => status === wanted);
  if (!found)
    throw new RangeError(`unknown range status "${text}": use one of ${rangeStatuses.join(", ")}`);
  return found;
}
