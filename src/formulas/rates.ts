import type { Formula, Quantity } from "./formula";

const floorArea: Quantity = {
  name: "A",
  shown: "A_floor",
  meaning: "floor area",
  unit: { ip: "ft²", si: "m²" },
  valid: [100, 12000],
};
const bedrooms: Quantity = {
  name: "N",
  shown: "N_br",
  meaning: "number of bedrooms",
  unit: "1",
  valid: [0, 12],
};
const areaRate: Quantity = {
  name: "a",
  shown: "a",
  meaning: "rate for each unit of floor area",
  unit: { ip: "cfm/ft²", si: "L/s/m²" },
  valid: [0.01, 0.5],
};
const personRate: Quantity = {
  name: "b",
  shown: "b",
  meaning: "rate for each person, bedrooms plus one",
  unit: { ip: "cfm", si: "L/s" },
  valid: [2, 10],
};
const rate = {
  name: "R",
  shown: "Q_req",
  meaning: "required rate",
  unit: { ip: "cfm", si: "L/s" },
};
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
  example: {
    given: { a: 0.03, A: 1800, b: 7.5, N: 3 },
    gives: 84,
    digits: 6,
    note: "1800 ft², 3 bedrooms",
  },
};

export const dwellingRateLarger: Formula = {
  id: "dwelling-rate-larger",
  title: "Required dwelling rate as the larger of an area rate and a bedroom rate",
  result: { ...rate, unit: "L/s" },
  symbols: [
    { ...areaRate, unit: "L/s/m²" },
    { ...floorArea, unit: "m²", valid: [10, 1000] },
    {
      name: "B",
      shown: "Q_br",
      meaning: "rate for this number of bedrooms",
      unit: "L/s",
      valid: [5, 100],
    },
  ],
  text: "a * A >= B ? a * A : B",
  validity: "Floor area above 0.",
  source: chosen,
  example: {
    given: { a: 0.3, A: 80, B: 25 },
    gives: 25,
    digits: 6,
    note: "80 m²: 24 L/s by area, 25 by bedrooms",
  },
};

export const dwellingRateBounded: Formula = {
  id: "dwelling-rate-bounded",
  title: "Required dwelling rate from floor area, between a least and a most",
  result: rate,
  symbols: [
    areaRate,
    floorArea,
    { name: "lo", shown: "least", meaning: "least rate", unit: rate.unit, valid: [20, 60] },
    { name: "hi", shown: "most", meaning: "largest rate", unit: rate.unit, valid: [80, 200] },
  ],
  steps: [{ name: "B", shown: "Q_area", meaning: "rate by area", unit: rate.unit, text: "a * A" }],
  text: "B < lo ? lo : B > hi ? hi : B",
  validity: "Floor area above 0.",
  source: chosen,
  example: {
    given: { a: 0.035, A: 2000, lo: 50, hi: 90 },
    gives: 70,
    digits: 6,
    note: "2000 ft² of a manufactured home",
  },
};

export const rateForPersons: Formula = {
  id: "rate-for-persons",
  title: "Required dwelling rate with more persons than bedrooms plus one",
  result: { ...rate, name: "Rn", shown: "Q_pers" },
  symbols: [
    { ...personRate, name: "R", shown: "Q_req", meaning: "rate before", valid: [20, 400] },
    personRate,
    { name: "n", shown: "n", meaning: "number of persons", unit: "1", valid: [1, 14] },
    bedrooms,
  ],
  text: "n > N + 1 ? R + b * (n - N - 1) : R",
  validity: "Editions that count the persons known to live there.",
  source: chosen,
  example: {
    given: { R: 84, b: 7.5, n: 6, N: 3 },
    gives: 99,
    digits: 6,
    note: "six persons in three bedrooms",
  },
};

const volume = {
  name: "V",
  shown: "V",
  meaning: "room volume",
  unit: "",
  valid: [10, 5000],
} as const;
const airChanges = {
  name: "n",
  shown: "n",
  meaning: "air changes an hour",
  unit: "1/h",
  valid: [0.1, 20],
} as const;

export const airChangeRateIp: Formula = {
  id: "air-change-rate-ip",
  title: "Rate for a number of air changes, ft³ and cfm",
  result: { ...rate, unit: "cfm" },
  symbols: [airChanges, { ...volume, unit: "ft³" }],
  text: "n * V / 60",
  validity: "A closed room; its volume, not that of the dwelling.",
  source: { work: "definition of an air change", clause: "", mark: "by definition" },
  example: {
    given: { n: 5, V: 960 },
    gives: 80,
    digits: 6,
    note: "a kitchen of 8 by 10 by 12 ft",
  },
};

export const airChangeRateSi: Formula = {
  ...airChangeRateIp,
  id: "air-change-rate-si",
  title: "Rate for a number of air changes, m³ and L/s",
  result: { ...rate, unit: "L/s" },
  symbols: [airChanges, { ...volume, unit: "m³", valid: [1, 200] }],
  text: "n * V / 3.6",
  example: { given: { n: 5, V: 27 }, gives: 37.5, digits: 6, note: "a kitchen of 27 m³" },
};

export const betweenTwoRows: Formula = {
  id: "between-two-rows",
  title: "Straight line between two rows of a table",
  result: { name: "y", shown: "y", meaning: "value between the rows", unit: "1" },
  symbols: [
    { name: "x", shown: "x", meaning: "where to read", unit: "1", valid: [0.25, 1] },
    { name: "x1", shown: "x₁", meaning: "lower row", unit: "1", valid: [0.25, 0.45] },
    { name: "y1", shown: "y₁", meaning: "value at the lower row", unit: "1", valid: [1, 4] },
    { name: "x2", shown: "x₂", meaning: "upper row", unit: "1", valid: [0.5, 1] },
    { name: "y2", shown: "y₂", meaning: "value at the upper row", unit: "1", valid: [1, 4] },
  ],
  text: "y1 + (y2 - y1) * (x - x1) / (x2 - x1)",
  validity: "Between the rows only.",
  source: { work: "linear interpolation", clause: "", mark: "by definition" },
  example: {
    given: { x: 0.4, x1: 0.33, y1: 3, x2: 0.5, y2: 2 },
    gives: 2.588,
    digits: 3,
    note: "40 % running time",
  },
};

export const runningRate: Formula = {
  id: "running-rate",
  title: "Flow while running that makes up for a share of the time",
  result: { name: "Qon", shown: "Q_on", meaning: "flow while running", unit: rate.unit },
  symbols: [
    {
      name: "R",
      shown: "Q_req",
      meaning: "required continuous rate",
      unit: rate.unit,
      valid: [5, 500],
    },
    { name: "m", shown: "m", meaning: "run-time factor", unit: "1", valid: [1, 4] },
  ],
  text: "R * m",
  validity: "Within the edition's table of run-time factors.",
  source: chosen,
  example: { given: { R: 72, m: 2 }, gives: 144, digits: 6, note: "half of the time" },
};
