/** What a unit measures. Floor area and opening area are both "area". */
export type Dimension = "length" | "area" | "volume" | "flow" | "pressure";

export interface UnitEntry {
  readonly name: string;
  readonly dimension: Dimension;
  /** One of this unit in m, m², m³, m³/s or Pa. */
  readonly factor: number;
  /** Other spellings in headings, lower case. */
  readonly words: readonly string[];
}

const inch = 0.0254;
const foot = 0.3048;
const cfm = foot ** 3 / 60;
/** Conventional inch of water at 4 °C: 25.4 mm at 9.80665 Pa. */
const inchOfWater = 25.4 * 9.80665;

/** The units of the trade. Inch and foot are exact by definition. */
export const units: readonly UnitEntry[] = [
  { name: "in", dimension: "length", factor: inch, words: ["inch", "inches", '"', "″"] },
  { name: "ft", dimension: "length", factor: foot, words: ["foot", "feet"] },
  { name: "mm", dimension: "length", factor: 0.001, words: [] },
  { name: "cm", dimension: "length", factor: 0.01, words: [] },
  { name: "m", dimension: "length", factor: 1, words: ["metre", "metres", "meter", "meters"] },
  {
    name: "in²",
    dimension: "area",
    factor: inch ** 2,
    words: [
      "in2",
      "in^2",
      "sq in",
      "sq. in.",
      "sqin",
      "square inches",
      "sq inches",
      "sq. inches",
      "square inch",
      "sq inch",
      "po²",
      "po2",
      "pulg²",
      "pulg2",
    ],
  },
  {
    name: "ft²",
    dimension: "area",
    factor: foot ** 2,
    words: ["ft2", "ft^2", "sq ft", "sq. ft.", "sqft", "sf", "square feet"],
  },
  { name: "mm²", dimension: "area", factor: 1e-6, words: ["mm2", "mm^2", "sq mm", "qmm"] },
  { name: "cm²", dimension: "area", factor: 1e-4, words: ["cm2", "cm^2", "sq cm", "qcm"] },
  { name: "m²", dimension: "area", factor: 1, words: ["m2", "m^2", "sq m", "sqm"] },
  { name: "ft³", dimension: "volume", factor: foot ** 3, words: ["ft3", "ft^3", "cu ft", "cf"] },
  { name: "m³", dimension: "volume", factor: 1, words: ["m3", "m^3", "cu m"] },
  {
    name: "cfm",
    dimension: "flow",
    factor: cfm,
    words: ["ft³/min", "ft3/min", "cu ft/min", "pcm", "pi³/min", "pi3/min"],
  },
  {
    name: "L/s",
    dimension: "flow",
    factor: 0.001,
    words: ["l/s", "lps", "l s-1", "dm³/s", "dm3/s", "l/sec"],
  },
  {
    name: "m³/h",
    dimension: "flow",
    factor: 1 / 3600,
    words: ["m3/h", "m3/hr", "cmh", "m³/hr", "m³/u", "m3/u", "m³/std", "m3/std", "m3h"],
  },
  { name: "m³/s", dimension: "flow", factor: 1, words: ["m3/s"] },
  { name: "m³/min", dimension: "flow", factor: 1 / 60, words: ["m3/min"] },
  { name: "L/min", dimension: "flow", factor: 0.001 / 60, words: ["l/min", "lpm"] },
  { name: "Pa", dimension: "pressure", factor: 1, words: ["pascal", "pascals"] },
  { name: "hPa", dimension: "pressure", factor: 100, words: ["mbar", "mb"] },
  { name: "kPa", dimension: "pressure", factor: 1000, words: [] },
  {
    name: "mm w.c.",
    dimension: "pressure",
    factor: 9.80665,
    words: ["mm wc", "mmwc", "mmh2o", "mm h2o", "mm ws", "mmws", "mm ce", "mmce", "mm ca", "mmca"],
  },
  {
    name: "in w.c.",
    dimension: "pressure",
    factor: inchOfWater,
    words: [
      "in wc",
      "inwc",
      "in. w.c.",
      "in w.g.",
      "in wg",
      "in. w.g.",
      "inh2o",
      "in h2o",
      "iwc",
      "in. wc",
      "in.wc",
      "inches wc",
      "inches of water",
      "inches w.c.",
      "in. h2o",
      '"wc',
      '" wc',
    ],
  },
];

/** The unit of this name or spelling, or undefined. */
export function findUnit(text: string): UnitEntry | undefined {
  const exact = text.trim();
  const lower = exact.toLowerCase();
  return (
    units.find((unit) => unit.name === exact) ??
    units.find((unit) => unit.name.toLowerCase() === lower || unit.words.includes(lower))
  );
}

/** `value` in unit `from`, expressed in unit `to`. Throws where they measure different things. */
export function convert(value: number, from: string, to: string): number {
  return value * conversionFactor(from, to);
}

/** What to multiply a value in `from` by to have it in `to`. */
export function conversionFactor(from: string, to: string): number {
  const source = findUnit(from);
  const target = findUnit(to);
  if (!source || !target) throw new Error(`unknown unit: ${source ? to : from}`);
  if (source.dimension !== target.dimension)
    throw new Error(`${from} measures ${source.dimension} and ${to} ${target.dimension}`);
  return source === target ? 1 : source.factor / target.factor;
}
