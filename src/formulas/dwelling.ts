import type { Formula, Quantity } from "./formula";
import { floorArea, flow, infiltration } from "./quantities";

const chosen = {
  work: "the edition that supplies the numbers",
  clause: "see the edition's table",
  mark: "by definition",
} as const;
const total: Quantity = {
  name: "T",
  shown: "Q_tot",
  meaning: "required total rate",
  unit: flow.unit,
  valid: [20, 400],
};
const leaksIn: Quantity = { ...infiltration, name: "I", valid: [0, 400] };
const fans = {
  name: "Qfan",
  shown: "Q_fan",
  meaning: "rate that fans must move",
  unit: flow.unit,
};

export const creditCapped: Formula = {
  id: "credit-capped",
  title: "Infiltration that may count, at most a share of the total",
  result: infiltration,
  symbols: [
    { ...leaksIn, shown: "Q_leak" },
    total,
    {
      name: "c",
      shown: "c",
      meaning: "largest share of the total",
      unit: "1",
      valid: [0.1, 1],
    },
  ],
  text: "I > c * T ? c * T : I",
  validity: "New work under the editions that state a largest share.",
  source: chosen,
  example: {
    given: { I: 61.146, T: 84, c: 2 / 3 },
    gives: 56,
    digits: 6,
    note: "two thirds of 84 cfm",
  },
};

export const unbalancedShare: Formula = {
  id: "unbalanced-share",
  title: "Share of the infiltration that counts beside unbalanced fans",
  result: { name: "phi", shown: "φ", meaning: "share that counts", unit: "1" },
  symbols: [leaksIn, total],
  text: "I >= T ? 1 : I / T",
  validity: "Editions that tell balanced fans from others; balanced fans have 1.",
  source: { work: "ASHRAE 62.2-2019 and 2022", clause: "4.1.2", mark: "from memory" },
  example: {
    given: { I: 61.146, T: 84 },
    gives: 0.7279,
    digits: 4,
    note: "61.146 of 84 cfm",
  },
};

export const fanRateAfterCredit: Formula = {
  id: "fan-rate-after-credit",
  title: "Rate that fans must move after the infiltration credit",
  result: fans,
  symbols: [
    total,
    {
      name: "p",
      shown: "φ",
      meaning: "share that counts beside the fans",
      unit: "1",
      valid: [0, 1],
    },
    leaksIn,
    {
      name: "X",
      shown: "A_ext",
      meaning: "share of the envelope that faces outside",
      unit: "1",
      valid: [0, 1],
    },
  ],
  steps: [
    { name: "Q", shown: "Q", meaning: "what is left", unit: flow.unit, text: "T - p * I * X" },
  ],
  text: "Q > 0 ? Q : 0",
  validity: "Never below 0.",
  source: chosen,
  example: {
    given: { T: 84, p: 0.727929, I: 61.146, X: 1 },
    gives: 39.49,
    digits: 2,
    note: "84 cfm, a detached house, unbalanced fans",
  },
};

export const fanRateAfterExcess: Formula = {
  id: "fan-rate-after-excess",
  title: "Rate that fans must move where only infiltration above a default counts",
  result: fans,
  symbols: [
    total,
    { name: "s", shown: "s", meaning: "share of the excess", unit: "1", valid: [0.1, 1] },
    leaksIn,
    {
      name: "d",
      shown: "d",
      meaning: "default infiltration for each unit of floor area",
      unit: { ip: "cfm/ft²", si: "L/s/m²" },
      valid: [0.01, 0.2],
    },
    floorArea,
  ],
  steps: [
    { name: "E", shown: "E", meaning: "excess", unit: flow.unit, text: "I - d * A" },
    { name: "Q", shown: "Q", meaning: "what is left", unit: flow.unit, text: "T - s * E" },
  ],
  text: "E <= 0 ? T : Q > 0 ? Q : 0",
  validity: "Existing dwellings under an edition whose rate already holds the default.",
  source: chosen,
  example: {
    given: { T: 48, s: 0.5, I: 61.475, d: 0.02, A: 1800 },
    gives: 35.2625,
    digits: 6,
    note: "61.475 − 36 cfm exceed the default; half of that counts",
  },
};

export const onRate: Formula = {
  id: "on-rate",
  title: "Flow while running that makes up for the time off",
  result: { name: "Qon", shown: "Q_on", meaning: "flow while running", unit: flow.unit },
  symbols: [
    { ...total, name: "R", shown: "Q_fan", meaning: "rate that fans must move" },
    { name: "e", shown: "ε", meaning: "effectiveness", unit: "1", valid: [0.3, 1] },
    { name: "f", shown: "f", meaning: "share of the time on", unit: "1", valid: [0.05, 1] },
  ],
  text: "R / (e * f)",
  validity: "Effectiveness 1 over short cycles: the plain average over time.",
  source: chosen,
  example: { given: { R: 72, e: 1, f: 0.5 }, gives: 144, digits: 6, note: "half of each 3 h" },
};

export const roomDeficit: Formula = {
  id: "room-deficit",
  title: "What the exhaust of a room lacks",
  result: { name: "D", shown: "D", meaning: "deficit of the room", unit: flow.unit },
  symbols: [
    { ...total, name: "R", shown: "Q_req", meaning: "required rate on demand" },
    { ...total, name: "M", shown: "Q", meaning: "measured flow, 0 without a fan", valid: [0, 400] },
    { ...total, name: "W", shown: "W", meaning: "credit of an openable window", valid: [0, 40] },
  ],
  steps: [{ name: "B", shown: "B", meaning: "what is left", unit: flow.unit, text: "R - M - W" }],
  text: "B > 0 ? B : 0",
  validity: "Never below 0: a strong fan does not serve another room.",
  source: chosen,
  example: { given: { R: 50, M: 0, W: 20 }, gives: 30, digits: 6, note: "a bath with a window" },
};

export const rateWithDeficits: Formula = {
  id: "rate-with-deficits",
  title: "Dwelling rate raised by a part of what its rooms lack",
  result: { name: "Rd", shown: "Q_raised", meaning: "raised rate", unit: flow.unit },
  symbols: [
    total,
    { name: "q", shown: "q", meaning: "part that is added", unit: "1", valid: [0.1, 1] },
    { ...total, name: "S", shown: "S", meaning: "sum of the deficits", valid: [0, 400] },
  ],
  text: "T + q * S",
  validity: "Existing dwellings under an edition with this alternative.",
  source: chosen,
  example: { given: { T: 84, q: 0.25, S: 130 }, gives: 116.5, digits: 6, note: "84 + 32.5" },
};

export const balancedRate: Formula = {
  id: "balanced-rate",
  title: "Dwelling rate of a balanced and ducted system",
  result: { name: "Rb", shown: "Q_bal", meaning: "reduced rate", unit: flow.unit },
  symbols: [total, { name: "r", shown: "r", meaning: "reduction", unit: "1", valid: [0, 0.5] }],
  text: "T * (1 - r)",
  validity: "Balanced, and ducted to the rooms that the code names.",
  source: chosen,
  example: { given: { T: 60, r: 0.3 }, gives: 42, digits: 6, note: "30 % less" },
};
