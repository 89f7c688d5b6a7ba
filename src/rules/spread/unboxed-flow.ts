import { plain } from "../../algebra";
import { unboxedFlow } from "../../formulas";
import { area, constant, pressure, units } from "../arguments";
import { optional } from "../contract/argument";
import type { Help } from "../contract/help";
import { byFormula } from "../contract/rule";
import type { Native, NativeForm } from "../native/native";
import { wrong } from "../native/text";
import { requireLine } from "./unboxed-budget";

/** Two readings of one fan through different openings. */
export const twoReadings = { area, pressure, area2: area, pressure2: pressure };

export const rule = byFormula({
  id: "UNBOXED_FLOW",
  title: "Flow without the box, from two openings",
  arguments: { ...twoReadings, constant: optional(constant), units },
  formula: unboxedFlow,
  of: { K: "constant", A: "area", P: "pressure", A2: "area2", P2: "pressure2" },
  check: ({ area, pressure, area2, pressure2 }) =>
    requireLine({ area, pressure }, { area: area2, pressure: pressure2 }),
});

/** An error for two readings that no fan gives, or that are too near each other. */
export function checkLine(native: Native): void {
  const [A, P, A2, P2] = native.all("near", "area", "pressure", "area2", "pressure2");
  const odd = wrong("no fan gives these two readings, or they are too near each other: read again");
  const q = `(${A}*SQRT(${P})-${A2}*SQRT(${P2}))`;
  const slope = `${q}/(${P2}-${P})`;
  const far = `MAX(${P},${P2})>=2*MIN(${P},${P2})`;
  const falls = `AND(${q}*(${P2}-${P})>=0,${slope}<=0.05*(${A}*SQRT(${P})+${slope}*${P}))`;
  const sound = `IF(AND(${far},${A}<>${A2}),IF(${falls},0,${odd}),${odd})`;
  native.check(`IF(COUNT(${P},${P2},${A},${A2})=4,IF(MIN(${P},${P2},${A},${A2})>0,${sound},0),0)`);
}

export const native: NativeForm = (native) => {
  checkLine(native);
  const [A, P, A2, P2, K] = native.all(
    "near",
    "area",
    "pressure",
    "area2",
    "pressure2",
    "constant",
  );
  return plain(unboxedFlow, { A, P, A2, P2, K });
};

export const help: Help = {
  computes: [
    "A box holds a fan back a little. Read with two openings, the flow falls on a straight line against the box pressure; carried on to 0 Pa it tells what the fan moves without the box.",
    "It is our own method and no standard names it: keep the reading itself as the measured flow.",
  ],
  result: 'Flow at no box pressure, cfm (L/s for "si").',
  examples: [
    {
      words: "A fan reads 3.859 Pa through 32.71 in² and 14.537 Pa through 16 in².",
      args: [32.71, 3.859, 16, 14.537],
      gives: 70.0124,
    },
  ],
  troubles: [
    { when: "Both areas are alike: there is no line.", args: [24, 4, 24, 4] },
    { when: "The pressures are less than 2 : 1 apart.", args: [32, 4, 24, 7] },
    { when: "The flow rises with the pressure.", args: [12, 4, 24, 8] },
    { when: "The flow falls faster than any fan's.", args: [24, 4, 12, 8] },
    { when: "A pressure is negative.", args: [24, -4, 12, 15] },
  ],
  related: ["UNBOXED_SPREAD", "UNBOXED_ESTIMATE", "FLOW"],
};
