import type { Formula, Quantity } from "./formula";
import { floorArea, flow, infiltration, step, symbol } from "./quantities";

const leak = symbol("Q50", "Q₅₀", "leakage of the dwelling at 50 Pa", flow.unit, [100, 8000]);
const height: readonly Quantity[] = [
  symbol(
    "H",
    "H",
    "height from the lowest to the highest point of the pressure boundary above ground",
    { ip: "ft", si: "m" },
    [2, 60],
  ),
  symbol("Hr", "H_r", "reference height", { ip: "ft", si: "m" }, [2, 10]),
  symbol("z", "z", "exponent of the height", "1", [0.2, 0.6]),
];
const weather = symbol("w", "wsf", "weather and shielding factor of the place", "1", [0.2, 1.5]);

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
};

const divisor = symbol("k", "k", "the edition's factor for the floor area", "1", [1, 10]);

export const infiltrationByLeakageIp: Formula = {
  id: "infiltration-by-leakage-ip",
  title: "Infiltration by normalized leakage, cfm and ft²",
  result: { ...infiltration, unit: "cfm" },
  symbols: [leak, floorArea, ...height, weather, divisor],
  steps: [
    { ...leakageArea, unit: "in²", text: leakageIp },
    step("NL", "NL", "normalized leakage", "1", "1000 * (L / 144 / A) * (H / Hr) ^ z"),
  ],
  text: "NL * w * A / k",
  validity: "A whole dwelling, leakage measured with its fans sealed or off.",
  source: {
    work: "ASHRAE 62.2",
    clause: "4.1.2 (factor of the floor area: read; height and exponent: from memory)",
    mark: "from memory",
  },
};

export const infiltrationByLeakageSi: Formula = {
  ...infiltrationByLeakageIp,
  id: "infiltration-by-leakage-si",
  title: "Infiltration by normalized leakage, L/s and m²",
  result: { ...infiltration, unit: "L/s" },
  steps: [
    { ...leakageArea, unit: "cm²", text: leakageSi },
    step("NL", "NL", "normalized leakage", "1", "1000 * (L / 10000 / A) * (H / Hr) ^ z"),
  ],
};

export const infiltrationShort: Formula = {
  id: "infiltration-short",
  title: "Infiltration straight from the leakage at 50 Pa",
  result: infiltration,
  symbols: [
    symbol("c", "c", "the edition's factor for the leakage", "1", [0.01, 0.1]),
    leak,
    weather,
    ...height,
  ],
  text: "c * Q50 * w * (H / Hr) ^ z",
  validity: "A whole dwelling, leakage measured with its fans sealed or off.",
  source: { work: "ASHRAE 62.2-2019 and 2022", clause: "4.1.2", mark: "from memory" },
};
