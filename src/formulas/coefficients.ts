import type { Formula } from "./formula";
import { quantity, symbol } from "./quantities";

export const plenumCoefficient: Formula = {
  id: "plenum-coefficient",
  title: "Discharge coefficient of a sharp hole in a large box face",
  result: quantity("C", "C", "discharge coefficient", "1"),
  symbols: [symbol("Re", "Re_d", "Reynolds number of the hole", "1", [1000, 1e6])],
  text: "0.5961 + 0.000521 * (1e6 / Re) ^ 0.7",
  validity:
    "The limit β → 0 of the pipe formula, outside its stated limits: a guide for design, not a proof.",
  source: {
    work: "ISO 5167-2:2003 (Reader-Harris/Gallagher)",
    clause: "5.3.2.1, limit β → 0 taken here",
    mark: "by definition",
  },
};

export const approachFactor: Formula = {
  id: "approach-factor",
  title: "Velocity-of-approach factor",
  result: quantity("E", "E", "approach factor", "1"),
  symbols: [symbol("beta", "β", "hole diameter over pipe diameter", "1", [0.01, 0.9])],
  text: "1 / sqrt(1 - beta ^ 4)",
  validity: "0 ≤ β < 1. For a box, β² is the open share of the face.",
  source: { work: "ISO 5167-1:2003", clause: "3.3.6", mark: "from memory" },
};
