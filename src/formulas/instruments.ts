import type { Formula } from "./formula";
import { flow, quantity, symbol } from "./quantities";

const definition = { work: "definition of a flow", clause: "volume over time" } as const;
const result = quantity("Q", "Q", "air flow", flow.unit);

/** Every instrument is this: exponent 1 for one that shows a flow, 0.5 for a pressure, −1 for a time. */
export const deviceFlow: Formula = {
  id: "device-flow",
  title: "Flow from the reading of a device",
  result,
  symbols: [
    symbol("K", "K", "constant of the device at this setting", "1", [0.1, 1000]),
    symbol("r", "r", "reading", "1", [0.5, 500]),
    symbol("n", "n", "exponent of the device", "1", [-1, 1]),
  ],
  text: "K * r ^ n",
  validity: "Within the readings for which the device's own record states constant and exponent.",
  source: {
    work: "power law between a reading and a flow",
    clause: "constant and exponent from the device's record",
    mark: "common practice",
  },
};

/** The same with what a spread needs: an error in the reading and one in the flow, each 0 on average. */
export const deviceFlowWithErrors: Formula = {
  ...deviceFlow,
  id: "device-flow-with-errors",
  title: "Flow from the reading of a device, with its errors",
  symbols: [
    ...deviceFlow.symbols,
    symbol("d", "δ_r", "error of the reading: resolution", "1", [-0.05, 0.05]),
    symbol("e", "δ_Q", "error of the flow: the device's limit", flow.unit, [-5, 5]),
  ],
  text: "K * (r + d) ^ n + e",
};

export const deviceLimit: Formula = {
  id: "device-limit",
  title: "Limit of a device: a share of the flow, but no less than a floor",
  result: quantity("a", "a", "largest error", flow.unit),
  symbols: [
    flow,
    symbol("s", "s", "limit in per cent of the flow", "%", [1, 25]),
    symbol("m", "a_min", "least limit", flow.unit, [0, 10]),
  ],
  text: "s * Q / 100 >= m ? s * Q / 100 : m",
  validity: "Flow and floor in one unit.",
  source: {
    work: "limits stated as the greater of a share and a floor",
    clause: "California Reference Appendix RA3.7.2.1 states pressure limits so",
    mark: "two sources",
  },
};

export const bagFlowIp: Formula = {
  id: "bag-flow-ip",
  title: "Flow that fills a bag, ft³ and cfm",
  result: { ...result, unit: "cfm" },
  symbols: [
    symbol("V", "V", "volume of the full bag", "ft³", [0.5, 50]),
    symbol("t", "t", "time to fill it", "s", [1, 120]),
  ],
  text: "60 * V / t",
  validity: "A bag empty at the start, at the pressure of the room until it is full.",
  source: { ...definition, mark: "by definition" },
};

export const bagFlowSi: Formula = {
  ...bagFlowIp,
  id: "bag-flow-si",
  title: "Flow that fills a bag, L and L/s",
  result: { ...result, unit: "L/s" },
  symbols: [
    symbol("V", "V", "volume of the full bag", "L", [15, 1500]),
    symbol("t", "t", "time to fill it", "s", [1, 120]),
  ],
  text: "V / t",
};

export const panCode: Formula = {
  id: "pan-code",
  title: "What the readings of a pressure pan say of the duct behind a register",
  result: quantity("c", "c", "0 tight, 1 leaks, 2 repeat", "1"),
  symbols: [
    symbol("m", "m", "mean of the readings", "Pa", [-10, 10]),
    symbol("limit", "m_max", "limit of the job", "Pa", [0.2, 5]),
    symbol("s", "s", "largest reading less the smallest", "Pa", [0, 2]),
    symbol("most", "s_max", "most they may differ", "Pa", [0.1, 2]),
  ],
  text: "s > most ? 2 : m > limit ? 1 : m < -limit ? 1 : 0",
  validity: "The house held 50 Pa away from outdoors, the other registers open.",
  source: {
    work: "pressure pan over a register, house held at 50 Pa",
    clause: "limit set by the job",
    mark: "common practice",
  },
};
