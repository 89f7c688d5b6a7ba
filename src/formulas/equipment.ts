import type { Formula, Quantity } from "./formula";

const chosen = {
  work: "the code that supplies the numbers",
  clause: "see the code's table",
  mark: "by definition",
} as const;
const flow: Quantity = {
  name: "Q",
  shown: "Q",
  meaning: "flow",
  unit: "cfm",
  valid: [10, 1000],
};

export const fanEfficacy: Formula = {
  id: "fan-efficacy",
  title: "Flow for each watt",
  result: { name: "F", shown: "F", meaning: "efficacy", unit: "cfm/W" },
  symbols: [flow, { name: "P", shown: "P", meaning: "electric power", unit: "W", valid: [2, 500] }],
  text: "Q / P",
  validity: "Flow and power rated at one speed and static pressure.",
  source: { work: "definition of efficacy", clause: "", mark: "by definition" },
  example: { given: { Q: 50, P: 25 }, gives: 2, digits: 6, note: "50 cfm on 25 W" },
};

export const ductLeft: Formula = {
  id: "duct-left",
  title: "Longest duct once its elbows are taken off",
  result: { name: "L", shown: "L", meaning: "length left", unit: "ft" },
  symbols: [
    {
      name: "L0",
      shown: "L₀",
      meaning: "longest straight duct of the table",
      unit: "ft",
      valid: [0, 200],
    },
    { name: "e", shown: "e", meaning: "length for each elbow", unit: "ft", valid: [5, 20] },
    { name: "n", shown: "n", meaning: "number of elbows", unit: "1", valid: [0, 6] },
  ],
  text: "L0 - e * n",
  validity: "Below 0 the duct is not allowed with so many elbows.",
  source: chosen,
  example: {
    given: { L0: 56, e: 15, n: 2 },
    gives: 26,
    digits: 6,
    note: "56 ft of the table and two elbows",
  },
};

export const matchTolerance: Formula = {
  id: "match-tolerance",
  title: "How far a flow may lie from its design",
  result: { name: "d", shown: "d", meaning: "tolerance, either way", unit: "cfm" },
  symbols: [
    { ...flow, name: "D", shown: "Q_design", meaning: "design flow" },
    { name: "t", shown: "t", meaning: "fixed tolerance", unit: "cfm", valid: [5, 50] },
    { name: "s", shown: "s", meaning: "share of the design", unit: "1", valid: [0.05, 0.3] },
  ],
  text: "t >= s * D ? t : s * D",
  validity: "The larger of the two counts, above the design and below it.",
  source: chosen,
  example: { given: { D: 128.8, t: 15, s: 0.15 }, gives: 19.32, digits: 6, note: "15 % of 128.8" },
};
