import { flowFromPressure } from "../../formulas";
import { constant, flowToCome, high, low, units } from "../arguments";
import { optional } from "../contract/argument";
import type { Help } from "../contract/help";
import { byFormula } from "../contract/rule";

const end = (P: string) => [{ formula: flowFromPressure, of: { K: "constant", A: "area", P } }];

export const rule = byFormula({
  id: "REACH",
  title: "Lowest and highest flow of an opening",
  arguments: { area: flowToCome, constant: optional(constant), low, high, units },
  uses: [end("low"), end("high")],
});

export const help: Help = {
  computes: [
    "The ends of the pressure window, as flows. The ratio of the two is the root of the ratio of the pressures: about 2.8 for 1 to 8 Pa, so a box for small and large fans needs several openings.",
    "The two cells spill to the right. Inside an Excel table nothing spills: put the formula outside it.",
  ],
  result: 'Two cells for each area: lowest and highest flow, cfm (L/s with units "si").',
  examples: [
    {
      words: "What 24 in² can read between 1 and 8 Pa: two cells side by side.",
      args: [24],
      gives: [25.68, 72.634],
    },
  ],
  troubles: [
    { when: "The area is below 0.", args: [-24] },
    { when: "The low end of the window is 0.", args: [24, null, 0, 8] },
  ],
  related: ["FLOW", "RANGE_STATUS", "AREA_FOR"],
};
