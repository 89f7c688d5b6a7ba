import { rectArea } from "../../formulas";
import { flowToCome } from "../arguments";
import type { Help } from "../contract/help";
import { byFormula } from "../contract/rule";

export const rule = byFormula({
  id: "RECT_AREA",
  title: "Area of a rectangular opening",
  arguments: { width: flowToCome, height: flowToCome },
  formula: rectArea,
  of: { w: "width", h: "height" },
});

export const help: Help = {
  computes: ["Measure each side as cut, at both ends, and give the means."],
  result: "Open area: in² from inches, cm² from centimetres.",
  examples: [{ words: "A slot of 3 by 8 in.", args: [3, 8], gives: 24, unit: "in²" }],
  troubles: [
    { when: "A side was typed with its unit.", args: [3, "8 in"] },
    { when: "A side is below 0.", args: [3, -8] },
  ],
  related: ["ROUND_AREA", "OPEN_AREA"],
};
