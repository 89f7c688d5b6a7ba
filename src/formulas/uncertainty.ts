import type { Formula, Source } from "./formula";
import { constant, flow, pressure, quantity, symbol } from "./quantities";

const gum = (clause: string): Source => ({
  work: "JCGM 100:2008 (GUM)",
  clause,
  mark: "from memory",
});
const geometry: Source = {
  work: "plane geometry: half the difference of the largest and the smallest area",
  clause: "",
  mark: "by definition",
};

const anyUnit = "unit of the input";
const spread = quantity("u", "u", "standard spread", anyUnit);
const half = symbol("a", "a", "half width of the limits", anyUnit, [1e-4, 100]);

export const halfWidthSpread: Formula = {
  id: "half-width-spread",
  title: "Standard spread of limits within which every value is as likely",
  result: spread,
  symbols: [half],
  text: "a / sqrt(3)",
  validity: "A rectangular distribution from −a to a.",
  source: gum("4.3.7"),
};

export const fullWidthSpread: Formula = {
  id: "full-width-spread",
  title: "Standard spread of rounding to a resolution",
  result: spread,
  symbols: [{ ...half, name: "w", shown: "w", meaning: "resolution, the full width" }],
  text: "w / sqrt(12)",
  validity: "A rectangular distribution as wide as one step of the display.",
  source: gum("F.2.2.1"),
};

export const meanSpread: Formula = {
  id: "mean-spread",
  title: "Standard spread of a mean",
  result: spread,
  symbols: [
    symbol("s", "s", "standard deviation of the readings", anyUnit, [1e-4, 100]),
    symbol("n", "n", "number of readings", "1", [2, 100]),
  ],
  text: "s / sqrt(n)",
  validity: "Readings independent of one another; n − 1 degrees of freedom.",
  source: gum("4.2.3"),
};

export const manometerLimit: Formula = {
  id: "manometer-limit",
  title: "Limit of a manometer: a part of the reading, never less than a floor",
  result: quantity("a", "a", "half width of the limits", "Pa"),
  symbols: [
    pressure,
    symbol("p", "p", "part of the reading", "%", [0.1, 5]),
    symbol("f", "f", "least limit", "Pa", [0.02, 1]),
  ],
  text: "P * p / 100 > f ? P * p / 100 : f",
  validity: "Usual: 1 % or 0.25 Pa; California asks for 1 % or 0.2 Pa.",
  source: {
    work: "California Reference Appendix (form of the limit)",
    clause: "RA3.7.2.1",
    mark: "two sources",
  },
};

export const constantSpread: Formula = {
  id: "constant-spread",
  title: "Standard spread of the flow constant",
  result: { ...spread, unit: constant.unit },
  symbols: [constant, symbol("p", "p", "relative standard spread", "%", [0.1, 20])],
  text: "K * p / 100",
  validity: "The part is one standard deviation, not a limit.",
  source: { work: "a relative spread made absolute", clause: "", mark: "by definition" },
};

const length = { ip: "in", si: "cm" };
const tolerance = symbol("t", "t", "how far each size may be off", length, [0.001, 0.5]);
const areaLimitResult = quantity("a", "a", "half width of the area's limits", {
  ip: "in²",
  si: "cm²",
});

export const roundAreaLimit: Formula = {
  id: "round-area-limit",
  title: "How far the area of a round opening may be off",
  result: areaLimitResult,
  symbols: [tolerance, symbol("d", "d", "diameter of the hole", length, [0.5, 40])],
  text: "pi / 2 * d * t",
  validity: "A tolerance smaller than the diameter.",
  source: geometry,
};

export const rectAreaLimit: Formula = {
  id: "rect-area-limit",
  title: "How far the area of a rectangular opening may be off",
  result: areaLimitResult,
  symbols: [
    tolerance,
    symbol("w", "w", "width of the opening", length, [0.5, 60]),
    symbol("h", "h", "height of the opening", length, [0.5, 60]),
  ],
  text: "t * (w + h)",
  validity: "Both sizes off by the tolerance in the same direction; smaller than either.",
  source: geometry,
};

export const acceptanceLimit: Formula = {
  id: "acceptance-limit",
  title: "Least measured flow that guarded acceptance takes",
  result: quantity("L", "L", "acceptance limit", flow.unit),
  symbols: [
    { ...flow, name: "R", shown: "Q_req", meaning: "required rate" },
    symbol("z", "z", "normal quantile of the chance asked for, 1.645 at 95 %", "1", [0.1, 4]),
    symbol("u", "u", "standard spread of the flow", flow.unit, [0.01, 100]),
  ],
  text: "R + z * u",
  validity: "One lower limit, a spread that is about normal.",
  source: { work: "JCGM 106:2012", clause: "8.3.2", mark: "from memory" },
};
