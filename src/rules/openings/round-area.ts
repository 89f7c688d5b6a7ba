import { roundArea } from "../../formulas";
import { flowToCome } from "../arguments";
import type { Help } from "../contract/help";
import { byFormula } from "../contract/rule";

export const rule = byFormula({
  id: "ROUND_AREA",
  title: "Area of a round opening",
  arguments: { diameter: flowToCome },
  formula: roundArea,
  of: { d: "diameter" },
});

export const help: Help = {
  computes: ["Measure the hole as cut, twice and at right angles, and give the mean."],
  result: "Open area: in² from inches, cm² from centimetres.",
  examples: [
    { words: "A round hole of 4.25 in across.", args: [4.25], gives: 14.1863, unit: "in²" },
  ],
  troubles: [
    { when: "The diameter is below 0.", args: [-4] },
    { when: "The diameter was typed as text, or with its unit.", args: ["4.25 in"] },
  ],
  related: ["RECT_AREA", "OPEN_AREA", "DIAMETER_FOR"],
};
