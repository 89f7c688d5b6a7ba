import type { Formula, Quantity, Source } from "./formula";
import { area, constant, flow, pressure, quantity, step, symbol } from "./quantities";

const reference: Quantity = { ...flow, name: "R", shown: "Q_ref", meaning: "reference flow" };

export const openingStrength: Formula = {
  id: "opening-strength",
  title: "What the constant multiplies: area times root of pressure",
  result: quantity("x", "x", "flow at a constant of 1", "area·√Pa"),
  symbols: [area, pressure],
  text: "A * sqrt(P)",
  validity: "The constant of a box is the slope of the reference flows against it.",
  source: { work: "the flow formula without its constant", clause: "", mark: "by definition" },
};

export const percentError: Formula = {
  id: "percent-error",
  title: "Error of a flow in percent of its reference",
  result: quantity("e", "e", "error", "%"),
  symbols: [flow, reference],
  text: "100 * (Q - R) / R",
  validity: "Both flows of the same air, one straight after the other.",
  source: { work: "arithmetic", clause: "", mark: "by definition" },
};

export const agreementLimit: Formula = {
  id: "agreement-limit",
  title: "Limit of agreement",
  result: quantity("L", "L", "limit of agreement", "%"),
  symbols: [
    symbol("B", "B", "bias, the mean error", "%", [-30, 30]),
    symbol("z", "z", "−1.96 for the low limit, 1.96 for the high one", "1", [-2, 2]),
    symbol("s", "SD", "standard deviation of the errors", "%", [0.1, 30]),
  ],
  text: "B + z * s",
  validity: "Errors that are about normal; some 95 % of them lie between the two limits.",
  source: {
    work: "Bland and Altman, Lancet 1986",
    clause: "limits of agreement",
    mark: "two sources",
  },
};

/** Arithmetic on a model; whether a fan follows the model is said under validity. */
const ownMethod = (work: string): Source => ({
  work: `${work}: our own method, no standard names it`,
  clause: "",
  mark: "by definition",
});

export const unboxedFlow: Formula = {
  id: "unboxed-flow",
  title: "Flow without the box, from readings with two openings",
  result: quantity("Q0", "Q₀", "flow at no box pressure", flow.unit),
  symbols: [
    constant,
    { ...area, shown: "A₁", meaning: "open area of one reading" },
    { ...pressure, shown: "ΔP₁", meaning: "its pressure", valid: [0.5, 5] },
    { ...area, name: "A2", shown: "A₂", meaning: "open area of the other reading" },
    { ...pressure, name: "P2", shown: "ΔP₂", meaning: "the pressure there", valid: [6, 20] },
  ],
  text: "K * (A * sqrt(P) * P2 - A2 * sqrt(P2) * P) / (P2 - P)",
  validity: "Two pressures well apart, one twice the other or more; the fan otherwise unchanged.",
  source: ownMethod("straight line through two readings, flow against box pressure"),
};

const fanLine = ownMethod("fan taken to run on the straight line through two rated points");
const lineSlope = symbol(
  "s",
  "s",
  "slope of the fan's line, pressure lost a unit of flow gained",
  { ip: "Pa/cfm", si: "Pa/(L/s)" },
  [0.1, 2],
);
const lineTop = symbol("p", "P₀", "pressure of the fan's line at no flow", "Pa", [160, 400]);

export const fanLineSlope: Formula = {
  id: "fan-line-slope",
  title: "Slope of the straight line through two rated points of a fan",
  result: lineSlope,
  symbols: [
    { ...flow, shown: "Q_r1", meaning: "rated flow at the lower pressure", valid: [80, 200] },
    { ...pressure, shown: "P_r1", meaning: "lower rated pressure", valid: [20, 40] },
    { ...flow, name: "Q2", shown: "Q_r2", meaning: "the other rated flow", valid: [20, 60] },
    { ...pressure, name: "P2", shown: "P_r2", meaning: "higher rated pressure", valid: [50, 100] },
  ],
  text: "(P2 - P) / (Q - Q2)",
  validity: "Two points of one speed, where the flow falls as the pressure rises.",
  source: fanLine,
};

export const fanLineTop: Formula = {
  id: "fan-line-top",
  title: "Pressure at no flow on that line",
  result: lineTop,
  symbols: [
    { ...pressure, shown: "P_r1", meaning: "a rated pressure", valid: [20, 100] },
    lineSlope,
    { ...flow, shown: "Q_r1", meaning: "the rated flow there", valid: [20, 200] },
  ],
  text: "P + s * Q",
  validity: "A point of the straight line only: a real fan bends before it stalls.",
  source: fanLine,
};

export const unboxedEstimate: Formula = {
  id: "unboxed-estimate",
  title: "Estimate of the flow without the box, from one reading and the line of the rating",
  result: quantity("Q0", "Q₀", "estimated flow at no box pressure", flow.unit),
  symbols: [{ ...flow, valid: [20, 70] }, { ...pressure, valid: [1, 10] }, lineSlope, lineTop],
  steps: [
    step(
      "k",
      "k",
      "resistance of the duct, from the reading",
      { ip: "Pa/cfm²", si: "Pa/(L/s)²" },
      "(p - s * Q - P) / Q ^ 2",
    ),
  ],
  text: "2 * p / (s + sqrt(s ^ 2 + 4 * k * p))",
  validity:
    "A fan still on its line, a duct whose loss grows with the square of the flow. An estimate, never a measured value.",
  source: fanLine,
};
