import { type Column, columns, plain } from "../../algebra";
import { rangeCode } from "../../formulas";
import { high, low, pressure } from "../arguments";
import type { NumberArgument } from "../contract/argument";
import type { Help } from "../contract/help";
import { rule as ruleOf } from "../contract/rule";
import { sixDigits } from "../contract/say";
import type { NativeForm } from "../native/native";
import type { RangeStatus } from "../outcomes";

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

/** A pressure of any sign. */
const { need: _, ...anyPressure } = pressure;

export const rule = ruleOf({
  id: "RANGE_STATUS",
  title: "Where a pressure stands against the window",
  arguments: { pressure: anyPressure as NumberArgument<number>, low, high },
  formulas: [rangeCode],
  work({ pressure: P, low, high }) {
    const status = rangeStatus(P, low, high) as RangeStatus;
    const reason = {
      reversed: "is negative: the hoses are swapped, or the fan blows",
      below: `is below the ${sixDigits(low)} Pa where the window begins`,
      above: `is above the ${sixDigits(high)} Pa where the window ends`,
      "in range": `lies in the window of ${sixDigits(low)} to ${sixDigits(high)} Pa`,
    }[status];
    return {
      gives: status,
      why: () => ({ words: [`${sixDigits(P)} Pa ${reason}`], sources: [rangeCode.source] }),
    };
  },
  atOnce(call) {
    const [P, from, to] = ["pressure", "low", "high"].map((name) => call.column(name));
    const statuses = rangeStatusColumn(P as Column, from as Column, to as Column, call.length);
    return (i) => statuses[i];
  },
});

export const native: NativeForm = (native) => {
  const [P, from, to] = native.all("near", "pressure", "low", "high");
  const code = plain(rangeCode, { P, low: from, high: to });
  return `CHOOSE(3+${code},"reversed","below","in range","above")`;
};

export const help: Help = {
  computes: [
    "Too little pressure, and the manometer and the wind in the room decide the result; too much, and the box throttles the fan.",
    "Both ends of the window belong to it. A blank pressure gives a blank.",
  ],
  result: '"in range", "above", "below" or "reversed".',
  examples: [
    { words: "8.2 Pa lies above the usual window of 1 to 8 Pa.", args: [8.2], gives: "above" },
  ],
  troubles: [
    { when: "The pressure was typed as text.", args: ["8.2 Pa"] },
    { when: "The pressure is 0, which may be a cell not filled in.", args: [0] },
    { when: "An end of the window is 0.", args: [8.2, 0, 8] },
  ],
  related: ["NEXT_OPENING", "REACH", "VERDICT"],
};
