import type { Formula, Quantity } from "./formula";
import { floorArea, flow, infiltration, quantity, step, symbol } from "./quantities";

const chosen = {
  work: "the edition that supplies the numbers",
  clause: "see the edition's table",
  mark: "by definition",
} as const;
const total = symbol("T", "Q_tot", "required total rate", flow.unit, [20, 400]);
const leaksIn: Quantity = { ...infiltration, name: "I", valid: [0, 400] };
const fans = quantity("Qfan", "Q_fan", "rate that fans must move", flow.unit);

export const creditCapped: Formula = {
  id: "credit-capped",
  title: "Infiltration that may count, at most a share of the total",
  result: infiltration,
  symbols: [
    { ...leaksIn, shown: "Q_leak" },
    total,
    symbol("c", "c", "largest share of the total", "1", [0.1, 1]),
  ],
  text: "I > c * T ? c * T : I",
  validity: "New work under the editions that state a largest share.",
  source: chosen,
};

export const unbalancedShare: Formula = {
  id: "unbalanced-share",
  title: "Share of the infiltration that counts beside unbalanced fans",
  result: quantity("phi", "φ", "share that counts", "1"),
  symbols: [leaksIn, total],
  text: "I >= T ? 1 : I / T",
  validity: "Editions that tell balanced fans from others; balanced fans have 1.",
  source: { work: "ASHRAE 62.2-2019 and 2022", clause: "4.1.2", mark: "from memory" },
};

export const fanRateAfterCredit: Formula = {
  id: "fan-rate-after-credit",
  title: "Rate that fans must move after the infiltration credit",
  result: fans,
  symbols: [
    total,
    symbol("p", "φ", "share that counts beside the fans", "1", [0, 1]),
    leaksIn,
    symbol("X", "A_ext", "share of the envelope that faces outside", "1", [0, 1]),
  ],
  steps: [step("Q", "Q", "what is left", flow.unit, "T - p * I * X")],
  text: "Q > 0 ? Q : 0",
  validity: "Never below 0.",
  source: chosen,
};

export const fanRateAfterExcess: Formula = {
  id: "fan-rate-after-excess",
  title: "Rate that fans must move where only infiltration above a default counts",
  result: fans,
  symbols: [
    total,
    symbol("s", "s", "share of the excess", "1", [0.1, 1]),
    leaksIn,
    symbol(
      "d",
      "d",
      "default infiltration for each unit of floor area",
      { ip: "cfm/ft²", si: "L/s/m²" },
      [0.01, 0.2],
    ),
    floorArea,
  ],
  steps: [
    step("E", "E", "excess", flow.unit, "I - d * A"),
    step("Q", "Q", "what is left", flow.unit, "T - s * E"),
  ],
  text: "E <= 0 ? T : Q > 0 ? Q : 0",
  validity: "Existing dwellings under an edition whose rate already holds the default.",
  source: chosen,
};

export const onRate: Formula = {
  id: "on-rate",
  title: "Flow while running that makes up for the time off",
  result: quantity("Qon", "Q_on", "flow while running", flow.unit),
  symbols: [
    { ...total, name: "R", shown: "Q_fan", meaning: "rate that fans must move" },
    symbol("e", "ε", "effectiveness", "1", [0.3, 1]),
    symbol("f", "f", "share of the time on", "1", [0.05, 1]),
  ],
  text: "R / (e * f)",
  validity: "Effectiveness 1 over short cycles: the plain average over time.",
  source: chosen,
};

export const roomDeficit: Formula = {
  id: "room-deficit",
  title: "What the exhaust of a room lacks",
  result: quantity("D", "D", "deficit of the room", flow.unit),
  symbols: [
    { ...total, name: "R", shown: "Q_req", meaning: "required rate on demand" },
    { ...total, name: "M", shown: "Q", meaning: "measured flow, 0 without a fan", valid: [0, 400] },
    { ...total, name: "W", shown: "W", meaning: "credit of an openable window", valid: [0, 40] },
  ],
  steps: [step("B", "B", "what is left", flow.unit, "R - M - W")],
  text: "B > 0 ? B : 0",
  validity: "Never below 0: a strong fan does not serve another room.",
  source: chosen,
};

export const rateWithDeficits: Formula = {
  id: "rate-with-deficits",
  title: "Dwelling rate raised by a part of what its rooms lack",
  result: quantity("Rd", "Q_raised", "raised rate", flow.unit),
  symbols: [
    total,
    symbol("q", "q", "part that is added", "1", [0.1, 1]),
    { ...total, name: "S", shown: "S", meaning: "sum of the deficits", valid: [0, 400] },
  ],
  text: "T + q * S",
  validity: "Existing dwellings under an edition with this alternative.",
  source: chosen,
};

export const balancedRate: Formula = {
  id: "balanced-rate",
  title: "Dwelling rate of a balanced and ducted system",
  result: quantity("Rb", "Q_bal", "reduced rate", flow.unit),
  symbols: [total, symbol("r", "r", "reduction", "1", [0, 0.5])],
  text: "T * (1 - r)",
  validity: "Balanced, and ducted to the rooms that the code names.",
  source: chosen,
};
