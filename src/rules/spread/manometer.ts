import { plain } from "../../algebra";
import { fullWidthSpread, halfWidthSpread, manometerLimit } from "../../formulas";
import { limit } from "../arguments";
import { ifGiven, optional } from "../contract/argument";
import { zeroOrMore } from "../contract/need";
import type { Native } from "../native/native";

export const meter = { meterPercent: limit, meterFloor: limit };

const ifStated = optional(ifGiven(zeroOrMore));
export const display = { resolution: ifStated, zeroLimit: ifStated };

/** The spreads that a manometer adds to a pressure, as native text good on any sheet. */
export function nativeMeter(native: Native) {
  const [p, f] = [native.far("meterPercent"), native.far("meterFloor")];
  const [step, zero] = ["resolution", "zeroLimit"].map((name) => native.or(name, "0", "far"));
  return {
    limit: (P: string) => plain(halfWidthSpread, { a: `(${plain(manometerLimit, { P, p, f })})` }),
    resolution: plain(fullWidthSpread, { w: step as string }),
    zero: plain(halfWidthSpread, { a: zero as string }),
    key: [p, f, step, zero].join(" "),
  };
}
