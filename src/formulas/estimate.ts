import type { Formula } from "./formula";
import { flow, quantity, symbol } from "./quantities";

export const rateWithMargin: Formula = {
  id: "rate-with-margin",
  title: "Rate to be met by the rated flow of a fan",
  result: quantity("Q", "Q_rated", "least rated flow", flow.unit),
  symbols: [
    { ...flow, name: "R", shown: "Q_req", meaning: "required rate" },
    symbol("s", "s", "margin", "%", [0, 100]),
  ],
  text: "R * (1 + s / 100)",
  validity: "The margin is the estimator's own: for the duct, the terminal and the age of the fan.",
  source: { work: "arithmetic", clause: "", mark: "by definition" },
};
