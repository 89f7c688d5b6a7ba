import type { Formula, Quantity } from "./formula";
import { floorArea, flow, infiltration } from "./quantities";

const leak: Quantity = {
  name: "Q50",
  shown: "Q₅₀",
  meaning: "leakage of the dwelling at 50 Pa",
  unit: flow.unit,
  valid: [100, 8000],
};
const height: readonly Quantity[] = [
  {
    name: "H",
    shown: "H",
    meaning: "height from the lowest to the highest point of the pressure boundary above ground",
    unit: { ip: "ft", si: "m" },
    valid: [2, 60],
  },
  {
    name: "Hr",
    shown: "H_r",
    meaning: "reference height",
    unit: { ip: "ft", si: "m" },
    valid: [2, 10],
  },
  { name: "z", shown: "z", meaning: "exponent of the height", unit: "1", valid: [0.2, 0.6] },
];
const weather: Quantity = {
  name: "w",
  shown: "wsf",
  meaning: "weather and shielding factor of the place",
  unit: "1",
  valid: [0.2, 1.5],
};

const leakageIp = "Q50 * (4 / 50) ^ 0.65 * sqrt(1.2041 / 8) * 4.719474432e-4 / 6.4516e-4";
const leakageSi = "Q50 * (4 / 50) ^ 0.65 * sqrt(1.2041 / 8) * 10";
const leakageArea = {
  name: "L",
  shown: "ELA",
  meaning: "effective leakage area at 4 Pa",
} as const;

export const leakageAreaIp: Formula = {
  id: "leakage-area-ip",
  title: "Effective leakage area at 4 Pa from the leakage at 50 Pa, cfm and in²",
  result: { ...leakageArea, unit: "in²" },
  symbols: [{ ...leak, unit: "cfm" }],
  text: leakageIp,
  validity: "Flow exponent 0.65, air of 1.2041 kg/m³; not the equivalent leakage area at 10 Pa.",
  source: {
    work: "effective leakage area",
    clause: "leakage at 50 Pa divided by about 18",
    mark: "two sources",
  },
  example: { given: { Q50: 1500 }, gives: 82.435, digits: 3, note: "1500 cfm at 50 Pa" },
};

const divisor: Quantity = {
  name: "k",
  shown: "k",
  meaning: "the edition's factor for the floor area",
  unit: "1",
  valid: [1, 10],
};

export const infiltrationByLeakageIp: Formula = {
  id: "infiltration-by-leakage-ip",
  title: "Infiltration by normalized leakage, cfm and ft²",
  result: { ...infiltration, unit: "cfm" },
  symbols: [leak, floorArea, ...height, weather, divisor],
  steps: [
    { ...leakageArea, unit: "in²", text: leakageIp },
    {
      name: "NL",
      shown: "NL",
      meaning: "normalized leakage",
      unit: "1",
      text: "1000 * (L / 144 / A) * (H / Hr) ^ z",
    },
  ],
  text: "NL * w * A / k",
  validity: "A whole dwelling, leakage measured with its fans sealed or off.",
  source: {
    work: "ASHRAE 62.2",
    clause: "4.1.2 (factor of the floor area: read; height and exponent: from memory)",
    mark: "from memory",
  },
  example: {
    given: { Q50: 1500, A: 1800, H: 16, Hr: 8.2, z: 0.4, w: 0.6, k: 7.3 },
    gives: 61.475,
    digits: 3,
    note: "1500 cfm at 50 Pa, 1800 ft², 16 ft high",
  },
};

export const infiltrationByLeakageSi: Formula = {
  ...infiltrationByLeakageIp,
  id: "infiltration-by-leakage-si",
  title: "Infiltration by normalized leakage, L/s and m²",
  result: { ...infiltration, unit: "L/s" },
  steps: [
    { ...leakageArea, unit: "cm²", text: leakageSi },
    {
      name: "NL",
      shown: "NL",
      meaning: "normalized leakage",
      unit: "1",
      text: "1000 * (L / 10000 / A) * (H / Hr) ^ z",
    },
  ],
  example: {
    given: { Q50: 700, A: 170, H: 5, Hr: 2.5, z: 0.4, w: 0.6, k: 1.44 },
    gives: 28.913,
    digits: 3,
    note: "700 L/s at 50 Pa, 170 m², 5 m high",
  },
};

export const infiltrationShort: Formula = {
  id: "infiltration-short",
  title: "Infiltration straight from the leakage at 50 Pa",
  result: infiltration,
  symbols: [
    {
      name: "c",
      shown: "c",
      meaning: "the edition's factor for the leakage",
      unit: "1",
      valid: [0.01, 0.1],
    },
    leak,
    weather,
    ...height,
  ],
  text: "c * Q50 * w * (H / Hr) ^ z",
  validity: "A whole dwelling, leakage measured with its fans sealed or off.",
  source: { work: "ASHRAE 62.2-2019 and 2022", clause: "4.1.2", mark: "from memory" },
  example: {
    given: { c: 0.052, Q50: 1500, w: 0.6, H: 16, Hr: 8.2, z: 0.4 },
    gives: 61.146,
    digits: 3,
    note: "1500 cfm at 50 Pa, 16 ft high",
  },
};
