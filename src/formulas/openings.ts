import type { Formula, Source } from "./formula";
import { area, constant, flow, pressure } from "./quantities";

const geometry: Source = { work: "plane geometry", clause: "", mark: "by definition" };
const length = { ip: "in", si: "cm" };
const areaResult = { name: "A", shown: "A", meaning: "open area", unit: area.unit };

export const roundArea: Formula = {
  id: "round-area",
  title: "Area of a round opening",
  result: areaResult,
  symbols: [
    { name: "d", shown: "d", meaning: "diameter of the hole", unit: length, valid: [0.1, 40] },
  ],
  text: "pi / 4 * d ^ 2",
  validity: "Any round hole; the constant 1.07 suits sharp holes of about 3 to 6 in.",
  source: geometry,
  example: { given: { d: 4.25 }, gives: 14.186, digits: 3, note: "a 4¼ in hole" },
};

export const rectArea: Formula = {
  id: "rect-area",
  title: "Area of a rectangular opening",
  result: areaResult,
  symbols: [
    { name: "w", shown: "w", meaning: "width of the opening", unit: length, valid: [0.1, 60] },
    { name: "h", shown: "h", meaning: "height of the opening", unit: length, valid: [0.1, 60] },
  ],
  text: "w * h",
  validity: "Square corners. Long slots pass 1 to 6 % more than the constant says.",
  source: geometry,
  example: { given: { w: 3, h: 8 }, gives: 24, digits: 6, note: "a 3 by 8 in slot" },
};

export const areaForFlow: Formula = {
  id: "area-for-flow",
  title: "Open area that puts the box at a wanted pressure",
  result: areaResult,
  symbols: [flow, pressure, constant],
  text: "Q / (K * sqrt(P))",
  validity: "The flow formula turned round; same validity.",
  source: { work: "the flow formula, solved for A", clause: "", mark: "by definition" },
  example: {
    given: { Q: 50, P: 4, K: 1.07 },
    gives: 23.364,
    digits: 3,
    note: "50 cfm at 4 Pa",
  },
};

export const diameterForArea: Formula = {
  id: "diameter-for-area",
  title: "Diameter of a round hole of a wanted area",
  result: { name: "d", shown: "d", meaning: "diameter of the hole", unit: length },
  symbols: [area],
  text: "2 * sqrt(A / pi)",
  validity: "Any round hole.",
  source: geometry,
  example: { given: { A: 23.364 }, gives: 5.454, digits: 3, note: "the hole for 50 cfm at 4 Pa" },
};
