import type { Formula } from "./formula";
import { flow, pressure, quantity, symbol } from "./quantities";

export const rangeCode: Formula = {
  id: "range-code",
  title: "Where a pressure stands against the window of an opening",
  result: quantity("s", "s", "−2 reversed, −1 below, 0 in range, 1 above", "1"),
  symbols: [
    { ...pressure, valid: [-10, 20] },
    symbol("low", "P_low", "lowest pressure of the window", "Pa", [0.5, 3]),
    symbol("high", "P_high", "highest pressure of the window", "Pa", [5, 10]),
  ],
  text: "P < 0 ? -2 : P < low ? -1 : P > high ? 1 : 0",
  validity: "The window is about 1 to 8 Pa for one opening; both ends belong to it.",
  source: {
    work: "flow-box practice after ANSI/RESNET/ICC 380",
    clause: "section 6, air-flow resistance device",
    mark: "from memory",
  },
};

const required = { ...flow, name: "R", shown: "Q_req", meaning: "required rate" };

export const margin: Formula = {
  id: "margin",
  title: "Flow less the required rate",
  result: quantity("M", "M", "margin", flow.unit),
  symbols: [flow, required],
  text: "Q - R",
  validity: "Both in one unit.",
  source: { work: "arithmetic", clause: "", mark: "by definition" },
};

export const meetsCode: Formula = {
  id: "meets-code",
  title: "Whether a flow meets a required rate",
  result: quantity("v", "v", "1 meets, 0 short", "1"),
  symbols: [flow, required],
  text: "Q >= R ? 1 : 0",
  validity: "Simple acceptance: no tolerance below the rate, as the codes read.",
  source: {
    work: "ASHRAE 62.2 and IRC M1505 state least rates without a tolerance",
    clause: "see the edition",
    mark: "from memory",
  },
};
