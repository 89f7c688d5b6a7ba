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

const unit = (name: string, dimension: Dimension, factor: number, words = ""): UnitEntry => ({
  ...{ name, dimension, factor },
  words: words === "" ? [] : words.split(", "),
});

/** The units of the trade, each with its other spellings in headings as one text. Inch and foot are exact by definition. */
export const units: readonly UnitEntry[] = [
  unit("in", "length", inch, 'inch, inches, ", ″'),
  unit("ft", "length", foot, "foot, feet"),
  unit("mm", "length", 0.001),
  unit("cm", "length", 0.01),
  unit("m", "length", 1, "metre, metres, meter, meters"),
  unit(
    "in²",
    "area",
    inch ** 2,
    "in2, in^2, sq in, sq. in., sqin, square inches, sq inches, sq. inches, square inch, sq inch, po², po2, pulg², pulg2",
  ),
  unit("ft²", "area", foot ** 2, "ft2, ft^2, sq ft, sq. ft., sqft, sf, square feet"),
  unit("mm²", "area", 1e-6, "mm2, mm^2, sq mm, qmm"),
  unit("cm²", "area", 1e-4, "cm2, cm^2, sq cm, qcm"),
  unit("m²", "area", 1, "m2, m^2, sq m, sqm"),
  unit("ft³", "volume", foot ** 3, "ft3, ft^3, cu ft, cf"),
  unit("m³", "volume", 1, "m3, m^3, cu m"),
  unit("cfm", "flow", cfm, "ft³/min, ft3/min, cu ft/min, pcm, pi³/min, pi3/min"),
  unit("L/s", "flow", 0.001, "l/s, lps, l s-1, dm³/s, dm3/s, l/sec"),
  unit("m³/h", "flow", 1 / 3600, "m3/h, m3/hr, cmh, m³/hr, m³/u, m3/u, m³/std, m3/std, m3h"),
  unit("m³/s", "flow", 1, "m3/s"),
  unit("m³/min", "flow", 1 / 60, "m3/min"),
  unit("L/min", "flow", 0.001 / 60, "l/min, lpm"),
  unit("Pa", "pressure", 1, "pascal, pascals"),
  unit("hPa", "pressure", 100, "mbar, mb"),
  unit("kPa", "pressure", 1000),
  unit(
    "mm w.c.",
    "pressure",
    9.80665,
    "mm wc, mmwc, mmh2o, mm h2o, mm ws, mmws, mm ce, mmce, mm ca, mmca",
  ),
  unit(
    "in w.c.",
    "pressure",
    inchOfWater,
    'in wc, inwc, in. w.c., in w.g., in wg, in. w.g., inh2o, in h2o, iwc, in. wc, in.wc, inches wc, inches of water, inches w.c., in. h2o, "wc, " wc',
  ),
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
