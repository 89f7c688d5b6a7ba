import { type Column, columns } from "../algebra";
import { rangeCode } from "../formulas";

/** One opening is good for about this window. */
export const usualWindow = { low: 1, high: 8 } as const;

export const rangeStatuses = ["reversed", "below", "in range", "above"] as const;
export type RangeStatus = (typeof rangeStatuses)[number];

/** Where each pressure (Pa, room minus box) stands against the window; undefined for NaN. */
export function rangeStatusColumn(
  pressure: Column,
  low: Column,
  high: Column,
  length: number,
): (RangeStatus | undefined)[] {
  const codes = columns(rangeCode, { P: pressure, low, high }, length);
  const out = new Array<RangeStatus | undefined>(length);
  for (let i = 0; i < length; i++) {
    const p = typeof pressure === "number" ? pressure : (pressure[i] as number);
    out[i] = Number.isNaN(p) ? undefined : statusOfCode(codes[i] as number);
  }
  return out;
}

export function rangeStatus(pressure: number, low: number, high: number): RangeStatus | undefined {
  return rangeStatusColumn(pressure, low, high, 1)[0];
}

/** −2 reversed, −1 below, 0 in range, 1 above: the codes of the formula `range-code`. */
function statusOfCode(code: number): RangeStatus {
  return code === 0 ? "in range" : code === 1 ? "above" : code === -1 ? "below" : "reversed";
}
