import type { Formula } from "./formula";

export const plenumCoefficient: Formula = {
  id: "plenum-coefficient",
  title: "Discharge coefficient of a sharp hole in a large box face",
  result: { name: "C", shown: "C", meaning: "discharge coefficient", unit: "1" },
  symbols: [
    {
      name: "Re",
      shown: "Re_d",
      meaning: "Reynolds number of the hole",
      unit: "1",
      valid: [1000, 1e6],
    },
  ],
  text: "0.5961 + 0.000521 * (1e6 / Re) ^ 0.7",
  validity:
    "The limit β → 0 of the pipe formula, outside its stated limits: a guide for design, not a proof.",
  source: {
    work: "ISO 5167-2:2003 (Reader-Harris/Gallagher)",
    clause: "5.3.2.1, limit β → 0 taken here",
    mark: "by definition",
  },
  example: {
    given: { Re: 10557 },
    gives: 0.6087,
    digits: 4,
    note: "a 4 in hole at 4 Pa",
  },
};

export const approachFactor: Formula = {
  id: "approach-factor",
  title: "Velocity-of-approach factor",
  result: { name: "E", shown: "E", meaning: "approach factor", unit: "1" },
  symbols: [
    {
      name: "beta",
      shown: "β",
      meaning: "hole diameter over pipe diameter",
      unit: "1",
      valid: [0.01, 0.9],
    },
  ],
  text: "1 / sqrt(1 - beta ^ 4)",
  validity: "0 ≤ β < 1. For a box, β² is the open share of the face.",
  source: { work: "ISO 5167-1:2003", clause: "3.3.6", mark: "from memory" },
  example: { given: { beta: 0.5 }, gives: 1.0328, digits: 4, note: "a quarter of the face open" },
};
