import { oneValue } from "../../algebra";
import { fixed, InputError } from "../../cells";
import type { System } from "../../editions";
import {
  celsiusFromFahrenheit,
  densityMoistAir,
  densityOverIce,
  type Formula,
  metresFromFeet,
  pascalsFromMercury,
  pressureAtElevation,
  type Source,
} from "../../formulas";

/** What is known of the air at the fan: °F, %, inHg and ft (ip), or °C, %, hPa and m (si). */
export interface AirReading {
  readonly temperature: number;
  /** `usualAir.humidity` where left out. */
  readonly humidity?: number;
  /** As read at the place, not brought down to sea level. */
  readonly barometer?: number;
  readonly elevation?: number;
}

interface AirState {
  /** kg/m³. */
  readonly density: number;
  /** Pa. */
  readonly pressure: number;
  readonly pressureFrom: "barometer" | "elevation" | "sea level";
  /** The density formula that holds at this temperature, and what went into it. */
  readonly formula: Formula;
  readonly given: Readonly<Record<"t" | "p" | "h", number>>;
}

/** The ice equation of the handbook ends here, °C. */
const mostOverIce = 0.01;

/**
 * The density of the air and how it came about. A barometer reading wins over the elevation, whose
 * standard atmosphere is taken otherwise; without either the place is taken at sea level.
 *
 * The numbers are taken as they are: `airRanges` says what can be meant.
 */
export function airState(reading: AirReading, system: System): AirState {
  requireMeant(reading, system);
  const ip = system === "ip";
  const t = ip ? oneValue(celsiusFromFahrenheit, { F: reading.temperature }) : reading.temperature;
  const h = (reading.humidity ?? usualAir.humidity.value) / 100;
  const { barometer, elevation } = reading;
  let p: number;
  if (barometer !== undefined)
    p = ip ? oneValue(pascalsFromMercury, { B: barometer }) : barometer * 100;
  else {
    const z = elevation ?? 0;
    p = oneValue(pressureAtElevation, { z: ip ? oneValue(metresFromFeet, { f: z }) : z });
  }
  const formula = t > mostOverIce ? densityMoistAir : densityOverIce;
  const given = { t, p, h };
  return {
    density: oneValue(formula, given),
    pressure: p,
    pressureFrom:
      barometer !== undefined ? "barometer" : elevation !== undefined ? "elevation" : "sea level",
    formula,
    given,
  };
}

/** Weather moves a station's pressure by less than so much of its standard one. */
export const weather = 0.06;
/** A reading within so much of sea level's standard pressure may be brought down to sea level. */
export const seaLevel = 0.05;

type Given<T> = { readonly [K in keyof T]?: T[K] | undefined };

/** Throws an InputError for a barometer reduced to sea level, and a humidity typed as a fraction. */
export function requireMeant(
  { humidity, barometer, elevation }: Given<AirReading>,
  system: System,
): void {
  if (humidity !== undefined && humidity > 0 && humidity < 1)
    throw new InputError(`humidity ${humidity} %: type percent, such as ${100 * humidity}`);
  if (barometer === undefined || elevation === undefined) return;
  const ip = system === "ip";
  const unit = airRanges[system].barometer.unit;
  const inUnit = (z: number) => {
    const pascals = oneValue(pressureAtElevation, {
      z: ip ? oneValue(metresFromFeet, { f: z }) : z,
    });
    return ip ? pascals / oneValue(pascalsFromMercury, { B: 1 }) : pascals / 100;
  };
  const [standard, low] = [inUnit(elevation), inUnit(0)];
  const isSeaLevel = Math.abs(barometer / low - 1) < seaLevel;
  if (isSeaLevel && Math.abs(barometer / standard - 1) > weather)
    throw new InputError(
      `barometer ${barometer} ${unit} at ${elevation} ${airRanges[system].elevation.unit} is a pressure brought down to sea level: type the pressure at the place, about ${fixed(standard, ip ? 1 : 0)}, or leave the barometer blank`,
    );
}

interface Bounds {
  readonly low: number;
  readonly high: number;
  readonly unit: string;
}

/** What can be meant. Outside, a reading is most likely in another unit. */
export const airRanges: Readonly<Record<System, Readonly<Record<keyof AirReading, Bounds>>>> = {
  ip: {
    temperature: { low: -40, high: 140, unit: "°F" },
    humidity: { low: 0, high: 100, unit: "%" },
    barometer: { low: 14.8, high: 32.5, unit: "inHg" },
    elevation: { low: -1640, high: 16400, unit: "ft" },
  },
  si: {
    temperature: { low: -40, high: 60, unit: "°C" },
    humidity: { low: 0, high: 100, unit: "%" },
    barometer: { low: 500, high: 1100, unit: "hPa" },
    elevation: { low: -500, high: 5000, unit: "m" },
  },
};

/** Densities that air can have, kg/m³: 0.075, meant as lb/ft³, is none of them. */
export const densityRange: Bounds = { low: 0.5, high: 2, unit: "kg/m³" };

/** What stands in where nothing was read or said. */
export const usualAir = {
  reference: {
    what: "reference density",
    value: 1.2,
    unit: "kg/m³",
    source: {
      work: "standard air of ventilation standards",
      clause: "1.2 kg/m³; 0.075 lb/ft³ is 1.2014 kg/m³",
      mark: "from memory",
    },
  },
  humidity: {
    what: "relative humidity where none was read",
    value: 50,
    unit: "%",
    source: {
      work: "a lived-in room",
      clause: "dry or moist, the density differs by less than 0.5 % from it at 20 °C",
      mark: "common practice",
    },
  },
} as const satisfies Record<string, { source: Source; value: number; what: string; unit: string }>;

/** What standards and guides say of correcting a measured flow for the air. They disagree. */
interface AirView {
  readonly who: string;
  /** "leave": judge the flow as measured. "correct": for the density. "reference": at standard air. */
  readonly asks: "leave" | "correct" | "reference";
  readonly words: string;
  readonly source: Source;
}

export const airViews: readonly AirView[] = [
  {
    who: "EN 14134:2019",
    asks: "leave",
    words: "Functional measurements are not corrected for temperature or barometric pressure.",
    source: { work: "EN 14134:2019", clause: "scope", mark: "read" },
  },
  {
    who: "A public field-test guide",
    asks: "correct",
    words: "Flow hood readings at high altitude have to be adjusted.",
    source: {
      work: "NREL field test best practices",
      clause: "flow hood",
      mark: "read",
    },
  },
  {
    who: "The orifice equation",
    asks: "correct",
    words:
      "The same pressure moves more of a thinner air: the flow goes with the root of the reference density over the density at hand.",
    source: { work: "orifice equation", clause: "Q ∝ 1/√ρ", mark: "by definition" },
  },
  {
    who: "Ratings of fans",
    asks: "reference",
    words: "Rated flows are stated for standard air of 0.075 lb/ft³.",
    source: { work: "ANSI/AMCA 210–ASHRAE 51", clause: "standard air", mark: "from memory" },
  },
  {
    who: "ASHRAE 62.2",
    asks: "leave",
    words: "The required rate is a volume of air; the text names no density for it.",
    source: { work: "ASHRAE 62.2", clause: "4.1 and 5", mark: "from memory" },
  },
];
