import { pressureFromFlow } from "../../formulas";
import { area, constant, units } from "../arguments";
import { optional, reading } from "../contract/argument";
import type { Help } from "../contract/help";
import { zeroOrMore } from "../contract/need";
import { byFormula } from "../contract/rule";

export const rule = byFormula({
  id: "BOX_PRESSURE",
  title: "Pressure of the box at a flow",
  arguments: { area, flow: reading(zeroOrMore), constant: optional(constant), units },
  formula: pressureFromFlow,
  of: { Q: "flow", K: "constant", A: "area" },
});

export const help: Help = {
  computes: [
    "What the manometer will show: the flow formula turned round. Use it to see whether an opening suits a fan before it is cut or taped.",
  ],
  result: "Pressure, Pa.",
  examples: [
    {
      words: "What the manometer will read at 51.36 cfm through 24 in².",
      args: [24, 51.36],
      gives: 4,
    },
  ],
  troubles: [
    { when: "The flow is below 0.", args: [24, -50] },
    { when: "The area is blank or 0.", args: [0, 50] },
  ],
  related: ["FLOW", "AREA_FOR"],
};
