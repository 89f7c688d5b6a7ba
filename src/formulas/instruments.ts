import type { Formula } from "./formula";
import { flow } from "./quantities";

const definition = { work: "definition of a flow", clause: "volume over time" } as const;
const result = { name: "Q", shown: "Q", meaning: "air flow", unit: flow.unit };

/** Every instrument is this: exponent 1 for one that shows a flow, 0.5 for a pressure, −1 for a time. */
export const deviceFlow: Formula = {
  id: "device-flow",
  title: "Flow from the reading of a device",
  result,
  symbols: [
    {
      name: "K",
      shown: "K",
      meaning: "constant of the device at this setting",
      unit: "1",
      valid: [0.1, 1000],
    },
    { name: "r", shown: "r", meaning: "reading", unit: "1", valid: [0.5, 500] },
    { name: "n", shown: "n", meaning: "exponent of the device", unit: "1", valid: [-1, 1] },
  ],
  text: "K * r ^ n",
  validity: "Within the readings for which the device's own record states constant and exponent.",
  source: {
    work: "power law between a reading and a flow",
    clause: "constant and exponent from the device's record",
    mark: "common practice",
  },
  example: {
    given: { K: 25.68, r: 4, n: 0.5 },
    gives: 51.36,
    digits: 6,
    note: "24 in² with the constant 1.07",
  },
};

/** The same with what a spread needs: an error in the reading and one in the flow, each 0 on average. */
export const deviceFlowWithErrors: Formula = {
  ...deviceFlow,
  id: "device-flow-with-errors",
  title: "Flow from the reading of a device, with its errors",
  symbols: [
    ...deviceFlow.symbols,
    {
      name: "d",
      shown: "δ_r",
      meaning: "error of the reading: resolution",
      unit: "1",
      valid: [-0.05, 0.05],
    },
    {
      name: "e",
      shown: "δ_Q",
      meaning: "error of the flow: the device's limit",
      unit: flow.unit,
      valid: [-5, 5],
    },
  ],
  text: "K * (r + d) ^ n + e",
  example: {
    given: { K: 25.68, r: 4, n: 0.5, d: 0, e: 0 },
    gives: 51.36,
    digits: 6,
    note: "errors of 0 leave the flow",
  },
};

export const deviceLimit: Formula = {
  id: "device-limit",
  title: "Limit of a device: a share of the flow, but no less than a floor",
  result: { name: "a", shown: "a", meaning: "largest error", unit: flow.unit },
  symbols: [
    flow,
    { name: "s", shown: "s", meaning: "limit in per cent of the flow", unit: "%", valid: [1, 25] },
    { name: "m", shown: "a_min", meaning: "least limit", unit: flow.unit, valid: [0, 10] },
  ],
  text: "s * Q / 100 >= m ? s * Q / 100 : m",
  validity: "Flow and floor in one unit.",
  source: {
    work: "limits stated as the greater of a share and a floor",
    clause: "California Reference Appendix RA3.7.2.1 states pressure limits so",
    mark: "two sources",
  },
  example: {
    given: { Q: 50, s: 5, m: 5 },
    gives: 5,
    digits: 6,
    note: "5 % of 50 cfm is below the floor",
  },
};

export const bagFlowIp: Formula = {
  id: "bag-flow-ip",
  title: "Flow that fills a bag, ft³ and cfm",
  result: { ...result, unit: "cfm" },
  symbols: [
    { name: "V", shown: "V", meaning: "volume of the full bag", unit: "ft³", valid: [0.5, 50] },
    { name: "t", shown: "t", meaning: "time to fill it", unit: "s", valid: [1, 120] },
  ],
  text: "60 * V / t",
  validity: "A bag empty at the start, at the pressure of the room until it is full.",
  source: { ...definition, mark: "by definition" },
  example: { given: { V: 4, t: 4.8 }, gives: 50, digits: 6, note: "4 ft³ in 4.8 s" },
};

export const bagFlowSi: Formula = {
  ...bagFlowIp,
  id: "bag-flow-si",
  title: "Flow that fills a bag, L and L/s",
  result: { ...result, unit: "L/s" },
  symbols: [
    { name: "V", shown: "V", meaning: "volume of the full bag", unit: "L", valid: [15, 1500] },
    { name: "t", shown: "t", meaning: "time to fill it", unit: "s", valid: [1, 120] },
  ],
  text: "V / t",
  example: { given: { V: 120, t: 4.8 }, gives: 25, digits: 6, note: "120 L in 4.8 s" },
};

export const panCode: Formula = {
  id: "pan-code",
  title: "What the readings of a pressure pan say of the duct behind a register",
  result: { name: "c", shown: "c", meaning: "0 tight, 1 leaks, 2 repeat", unit: "1" },
  symbols: [
    { name: "m", shown: "m", meaning: "mean of the readings", unit: "Pa", valid: [-10, 10] },
    { name: "limit", shown: "m_max", meaning: "limit of the job", unit: "Pa", valid: [0.2, 5] },
    {
      name: "s",
      shown: "s",
      meaning: "largest reading less the smallest",
      unit: "Pa",
      valid: [0, 2],
    },
    { name: "most", shown: "s_max", meaning: "most they may differ", unit: "Pa", valid: [0.1, 2] },
  ],
  text: "s > most ? 2 : m > limit ? 1 : m < -limit ? 1 : 0",
  validity: "The house held 50 Pa away from outdoors, the other registers open.",
  source: {
    work: "pressure pan over a register, house held at 50 Pa",
    clause: "limit set by the job",
    mark: "common practice",
  },
  example: {
    given: { m: 1.4, limit: 1, s: 0.2, most: 0.5 },
    gives: 1,
    digits: 0,
    note: "1.4 Pa is above 1 Pa",
  },
};
