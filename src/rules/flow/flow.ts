import { flowFromPressure } from "../../formulas";
import { area, constant, pressure, units } from "../arguments";
import { optional } from "../contract/argument";
import type { Help } from "../contract/help";
import { byFormula } from "../contract/rule";

export const rule = byFormula({
  id: "FLOW",
  title: "Flow through an opening",
  arguments: { area, pressure, constant: optional(constant), units },
  formula: flowFromPressure,
  of: { K: "constant", A: "area", P: "pressure" },
});

export const help: Help = {
  computes: [
    "Give the pressure as room minus box. Exhaust makes the box negative to the room, so the difference is positive; a negative one means that the hoses are swapped, or that the fan blows.",
    "A blank pressure gives a blank. Some versions of Excel pass a blank cell as 0, so a pressure of exactly 0 is never taken for a reading.",
  ],
  result: 'Flow, cfm (L/s with units "si").',
  examples: [
    { words: "24 in² are open and the manometer reads 4 Pa.", args: [24, 4], gives: 51.36 },
  ],
  troubles: [
    { when: "The pressure is negative.", args: [24, -4] },
    { when: "The pressure is 0, which may be a cell not filled in.", args: [24, 0] },
    {
      when: "The area is blank.",
      args: [
        ["", 24],
        [4, 4],
      ],
    },
    { when: "The area is below 0.", args: [-24, 4] },
    { when: "The pressure was typed as text.", args: [24, "4 Pa"] },
    {
      when: "The ranges are not of one size.",
      args: [
        [12, 24, 36],
        [4, 4],
      ],
    },
  ],
  related: ["BOX_PRESSURE", "RANGE_STATUS", "REACH"],
};
