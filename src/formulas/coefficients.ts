import type { Formula, Quantity, Source } from "./formula";

const iso: Source = {
  work: "ISO 5167-2:2003 (Reader-Harris/Gallagher)",
  clause: "5.3.2.1",
  mark: "two sources",
};

const beta: Quantity = {
  name: "beta",
  shown: "β",
  meaning: "hole diameter over pipe diameter",
  unit: "1",
  valid: [0.1, 0.75],
};
const reynolds: Quantity = {
  name: "Re",
  shown: "Re",
  meaning: "pipe Reynolds number",
  unit: "1",
  valid: [5000, 1e8],
};
const upstream: Quantity = {
  name: "L1",
  shown: "L₁",
  meaning: "upstream tap distance over pipe diameter",
  unit: "1",
  valid: [0, 1],
};
const downstream: Quantity = {
  name: "L2",
  shown: "L′₂",
  meaning: "downstream tap distance over pipe diameter",
  unit: "1",
  valid: [0, 0.5],
};

const taps =
  "(0.043 + 0.080 * exp(-10 * L1) - 0.123 * exp(-7 * L1)) * (1 - 0.11 * a) * beta ^ 4 / (1 - beta ^ 4)";
const body =
  "0.5961 + 0.0261 * beta ^ 2 - 0.216 * beta ^ 8 + 0.000521 * (1e6 * beta / Re) ^ 0.7" +
  ` + (0.0188 + 0.0063 * a) * beta ^ 3.5 * (1e6 / Re) ^ 0.3 + ${taps}` +
  " - 0.031 * (m - 0.8 * m ^ 1.1) * beta ^ 1.3";
const steps = [
  {
    name: "a",
    shown: "A",
    meaning: "Reynolds term",
    unit: "1",
    text: "(19000 * beta / Re) ^ 0.8",
  },
  {
    name: "m",
    shown: "M′₂",
    meaning: "downstream dam height",
    unit: "1",
    text: "2 * L2 / (1 - beta)",
  },
];
const result = { name: "C", shown: "C", meaning: "discharge coefficient", unit: "1" };

export const orificeCoefficient: Formula = {
  id: "orifice-coefficient",
  title: "Discharge coefficient of a sharp plate in a pipe of 71.12 mm or more",
  result,
  symbols: [beta, reynolds, upstream, downstream],
  steps,
  text: body,
  validity:
    "d ≥ 12.5 mm, 71.12 ≤ D ≤ 1000 mm, 0.10 ≤ β ≤ 0.75, Re ≥ 5000 (β ≤ 0.56) or 16000·β² (β > 0.56).",
  source: iso,
  example: {
    given: { beta: 0.5, Re: 10000, L1: 0, L2: 0 },
    gives: 0.61858,
    digits: 5,
    note: "corner taps",
  },
};

export const orificeCoefficientSmallPipe: Formula = {
  id: "orifice-coefficient-small-pipe",
  title: "Discharge coefficient of a sharp plate in a pipe below 71.12 mm",
  result,
  symbols: [
    beta,
    reynolds,
    upstream,
    downstream,
    { name: "D", shown: "D", meaning: "pipe diameter", unit: "mm", valid: [50, 71.12] },
  ],
  steps,
  text: `${body} + 0.011 * (0.75 - beta) * (2.8 - D / 25.4)`,
  validity: "50 ≤ D < 71.12 mm, otherwise as for the larger pipe.",
  source: iso,
  example: {
    given: { beta: 0.5, Re: 10000, L1: 0, L2: 0, D: 71.12 },
    gives: 0.61858,
    digits: 5,
    note: "the added term is nil at 71.12 mm",
  },
};

export const plenumCoefficient: Formula = {
  id: "plenum-coefficient",
  title: "Discharge coefficient of a sharp hole in a large box face",
  result,
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
  source: { ...iso, clause: "5.3.2.1, limit β → 0 taken here", mark: "by definition" },
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
  symbols: [{ ...beta, valid: [0.01, 0.9] }],
  text: "1 / sqrt(1 - beta ^ 4)",
  validity: "0 ≤ β < 1. For a box, β² is the open share of the face.",
  source: { work: "ISO 5167-1:2003", clause: "3.3.6", mark: "from memory" },
  example: { given: { beta: 0.5 }, gives: 1.0328, digits: 4, note: "a quarter of the face open" },
};
