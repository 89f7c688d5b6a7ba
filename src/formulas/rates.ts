import type { Formula } from "./formula";
import { floorArea, flow, quantity, step, symbol } from "./quantities";

const bedrooms = symbol("N", "N_br", "number of bedrooms", "1", [0, 12]);
const areaRate = symbol(
  "a",
  "a",
  "rate for each unit of floor area",
  { ip: "cfm/ft²", si: "L/s/m²" },
  [0.01, 0.5],
);
const personRate = symbol("b", "b", "rate for each person, bedrooms plus one", flow.unit, [2, 10]);
const rate = quantity("R", "Q_req", "required rate", flow.unit);
const chosen = {
  work: "the edition that supplies the numbers",
  clause: "see the edition's table",
  mark: "by definition",
} as const;

export const dwellingRateEquation: Formula = {
  id: "dwelling-rate-equation",
  title: "Required dwelling rate from floor area and bedrooms",
  result: rate,
  symbols: [areaRate, floorArea, personRate, bedrooms],
  text: "a * A + b * (N + 1)",
  validity: "Floor area above 0; editions set a least number of bedrooms.",
  source: chosen,
};

export const dwellingRateLarger: Formula = {
  id: "dwelling-rate-larger",
  title: "Required dwelling rate as the larger of an area rate and a bedroom rate",
  result: { ...rate, unit: "L/s" },
  symbols: [
    { ...areaRate, unit: "L/s/m²" },
    { ...floorArea, unit: "m²", valid: [10, 1000] },
    symbol("B", "Q_br", "rate for this number of bedrooms", "L/s", [5, 100]),
  ],
  text: "a * A >= B ? a * A : B",
  validity: "Floor area above 0.",
  source: chosen,
};

export const dwellingRateBounded: Formula = {
  id: "dwelling-rate-bounded",
  title: "Required dwelling rate from floor area, between a least and a most",
  result: rate,
  symbols: [
    areaRate,
    floorArea,
    symbol("lo", "least", "least rate", rate.unit, [20, 60]),
    symbol("hi", "most", "largest rate", rate.unit, [80, 200]),
  ],
  steps: [step("B", "Q_area", "rate by area", rate.unit, "a * A")],
  text: "B < lo ? lo : B > hi ? hi : B",
  validity: "Floor area above 0.",
  source: chosen,
};

export const rateForPersons: Formula = {
  id: "rate-for-persons",
  title: "Required dwelling rate with more persons than bedrooms plus one",
  result: { ...rate, name: "Rn", shown: "Q_pers" },
  symbols: [
    { ...personRate, name: "R", shown: "Q_req", meaning: "rate before", valid: [20, 400] },
    personRate,
    symbol("n", "n", "number of persons", "1", [1, 14]),
    bedrooms,
  ],
  text: "n > N + 1 ? R + b * (n - N - 1) : R",
  validity: "Editions that count the persons known to live there.",
  source: chosen,
};

const volume = symbol("V", "V", "room volume", "", [10, 5000]);
const airChanges = symbol("n", "n", "air changes an hour", "1/h", [0.1, 20]);

export const airChangeRateIp: Formula = {
  id: "air-change-rate-ip",
  title: "Rate for a number of air changes, ft³ and cfm",
  result: { ...rate, unit: "cfm" },
  symbols: [airChanges, { ...volume, unit: "ft³" }],
  text: "n * V / 60",
  validity: "A closed room; its volume, not that of the dwelling.",
  source: { work: "definition of an air change", clause: "", mark: "by definition" },
};

export const airChangeRateSi: Formula = {
  ...airChangeRateIp,
  id: "air-change-rate-si",
  title: "Rate for a number of air changes, m³ and L/s",
  result: { ...rate, unit: "L/s" },
  symbols: [airChanges, { ...volume, unit: "m³", valid: [1, 200] }],
  text: "n * V / 3.6",
};

export const betweenTwoRows: Formula = {
  id: "between-two-rows",
  title: "Straight line between two rows of a table",
  result: quantity("y", "y", "value between the rows", "1"),
  symbols: [
    symbol("x", "x", "where to read", "1", [0.25, 1]),
    symbol("x1", "x₁", "lower row", "1", [0.25, 0.45]),
    symbol("y1", "y₁", "value at the lower row", "1", [1, 4]),
    symbol("x2", "x₂", "upper row", "1", [0.5, 1]),
    symbol("y2", "y₂", "value at the upper row", "1", [1, 4]),
  ],
  text: "y1 + (y2 - y1) * (x - x1) / (x2 - x1)",
  validity: "Between the rows only.",
  source: { work: "linear interpolation", clause: "", mark: "by definition" },
};

export const runningRate: Formula = {
  id: "running-rate",
  title: "Flow while running that makes up for a share of the time",
  result: quantity("Qon", "Q_on", "flow while running", rate.unit),
  symbols: [
    symbol("R", "Q_req", "required continuous rate", rate.unit, [5, 500]),
    symbol("m", "m", "run-time factor", "1", [1, 4]),
  ],
  text: "R * m",
  validity: "Within the edition's table of run-time factors.",
  source: chosen,
};
