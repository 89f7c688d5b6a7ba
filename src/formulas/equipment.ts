import type { Formula } from "./formula";
import { quantity, symbol } from "./quantities";

const chosen = {
  work: "the code that supplies the numbers",
  clause: "see the code's table",
  mark: "by definition",
} as const;
const flow = symbol("Q", "Q", "flow", "cfm", [10, 1000]);

export const fanEfficacy: Formula = {
  id: "fan-efficacy",
  title: "Flow for each watt",
  result: quantity("F", "F", "efficacy", "cfm/W"),
  symbols: [flow, symbol("P", "P", "electric power", "W", [2, 500])],
  text: "Q / P",
  validity: "Flow and power rated at one speed and static pressure.",
  source: { work: "definition of efficacy", clause: "", mark: "by definition" },
};

export const ductLeft: Formula = {
  id: "duct-left",
  title: "Longest duct once its elbows are taken off",
  result: quantity("L", "L", "length left", "ft"),
  symbols: [
    symbol("L0", "L₀", "longest straight duct of the table", "ft", [0, 200]),
    symbol("e", "e", "length for each elbow", "ft", [5, 20]),
    symbol("n", "n", "number of elbows", "1", [0, 6]),
  ],
  text: "L0 - e * n",
  validity: "Below 0 the duct is not allowed with so many elbows.",
  source: chosen,
};

export const matchTolerance: Formula = {
  id: "match-tolerance",
  title: "How far a flow may lie from its design",
  result: quantity("d", "d", "tolerance, either way", "cfm"),
  symbols: [
    { ...flow, name: "D", shown: "Q_design", meaning: "design flow" },
    symbol("t", "t", "fixed tolerance", "cfm", [5, 50]),
    symbol("s", "s", "share of the design", "1", [0.05, 0.3]),
  ],
  text: "t >= s * D ? t : s * D",
  validity: "The larger of the two counts, above the design and below it.",
  source: chosen,
};
