import type { Formula } from "./formula";
import { flow } from "./quantities";

export const rateWithMargin: Formula = {
  id: "rate-with-margin",
  title: "Rate to be met by the rated flow of a fan",
  result: { name: "Q", shown: "Q_rated", meaning: "least rated flow", unit: flow.unit },
  symbols: [
    { ...flow, name: "R", shown: "Q_req", meaning: "required rate" },
    { name: "s", shown: "s", meaning: "margin", unit: "%", valid: [0, 100] },
  ],
  text: "R * (1 + s / 100)",
  validity: "The margin is the estimator's own: for the duct, the terminal and the age of the fan.",
  source: { work: "arithmetic", clause: "", mark: "by definition" },
  example: {
    given: { R: 50, s: 20 },
    gives: 60,
    digits: 6,
    note: "50 cfm and a fifth more",
  },
};
