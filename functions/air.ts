import { constantIp, constantSi, densityFactor, standardFlow } from "../src/formulas";
import { type AirReading, airRanges, airState, densityRange, usualAir } from "../src/job";
import { fromError } from "./problem";
import { pick, Rows } from "./rows";
import { aboveZero, readUnits } from "./units";

const reference = usualAir.reference.value;

/**
 * Density of the air at the fan, from its temperature and what is known of its pressure.
 * @customfunction AIR_DENSITY
 * @helpurl https://localhost:3443/help/air-density.html
 * @param {any[][]} temperature Air temperature, °F (°C for "si"): one cell or a range.
 * @param {any[][]} [humidity] Relative humidity, %; 50 where blank or left out.
 * @param {any[][]} [barometer] Barometer at the place, inHg (hPa for "si"); it wins over the elevation.
 * @param {any[][]} [elevation] Elevation, ft (m for "si"); sea level where blank or left out.
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} Density, kg/m³ in both systems; 1.2 kg/m³ is 0.075 lb/ft³.
 */
export function airDensityOf(
  temperature: any[][],
  humidity: any[][],
  barometer: any[][],
  elevation: any[][],
  units: any,
): any[][] {
  const system = readUnits(units);
  const ranges = airRanges[system];
  const rows = new Rows({ temperature, humidity, barometer, elevation });
  const refuse = (name: keyof AirReading) => (value: number) => {
    const { low, high, unit } = ranges[name];
    if (value >= low && value <= high) return undefined;
    const other = system === "ip" ? airRanges.si[name].unit : airRanges.ip[name].unit;
    const hint = other === unit ? "" : ` (${other} with units "${system === "ip" ? "si" : "ip"}")`;
    return `give ${unit} from ${low} to ${high}${hint}`;
  };
  const t = rows.numbers("temperature", { blank: "nothing yet", refuse: refuse("temperature") });
  const optional = (name: "humidity" | "barometer" | "elevation") =>
    rows.has(name) ? rows.numbers(name, { blank: "allowed", refuse: refuse(name) }) : Number.NaN;
  const given = {
    humidity: optional("humidity"),
    barometer: optional("barometer"),
    elevation: optional("elevation"),
  };
  return rows.result((i) => {
    const reading: { -readonly [name in keyof AirReading]: AirReading[name] } = {
      temperature: pick(t, i),
    };
    for (const name of ["humidity", "barometer", "elevation"] as const) {
      const value = pick(given[name], i);
      if (!Number.isNaN(value)) reading[name] = value;
    }
    try {
      return airState(reading, system).density;
    } catch (error) {
      return fromError(error);
    }
  });
}

/**
 * Factor that makes the actual flow of a flow worked out with a constant for reference air.
 * @customfunction AIR_FACTOR
 * @helpurl https://localhost:3443/help/air-factor.html
 * @param {any[][]} density Density of the air, kg/m³, as AIR_DENSITY gives it: one cell or a range.
 * @param {any[][]} [reference] Density behind the constant, kg/m³; 1.2 where left out.
 * @returns {any[][]} Factor to multiply the flow by: √(reference ÷ density).
 */
export function airFactorOf(density: any[][], reference: any[][]): any[][] {
  const rows = new Rows({ density, reference });
  const rho = rows.numbers("density", { blank: "nothing yet", refuse: beDensity });
  const rho0 = referenceOf(rows);
  const factors = rows.values(densityFactor, { rho, rho0 });
  return rows.result((i) => pick(factors, i));
}

/**
 * Flow of reference air that carries the same mass as an actual flow: for use beside fan ratings.
 * @customfunction STANDARD_FLOW
 * @helpurl https://localhost:3443/help/standard-flow.html
 * @param {any[][]} flow Actual flow, 0 or more, cfm or L/s: one cell or a range.
 * @param {any[][]} density Density of the air, kg/m³, as AIR_DENSITY gives it.
 * @param {any[][]} [reference] Reference density, kg/m³; 1.2 where left out.
 * @returns {any[][]} Flow at the reference density, in the unit of the flow.
 */
export function standardFlowOf(flow: any[][], density: any[][], reference: any[][]): any[][] {
  const rows = new Rows({ flow, density, reference });
  const refuse = (value: number) => (value >= 0 ? undefined : "give a flow of 0 or more");
  const Q = rows.numbers("flow", { blank: "nothing yet", refuse });
  const rho = rows.numbers("density", { refuse: beDensity });
  const rho0 = referenceOf(rows);
  const flows = rows.values(standardFlow, { Q, rho, rho0 });
  return rows.result((i) => pick(flows, i));
}

/**
 * Flow constant of an opening from its discharge coefficient and the density of the air.
 * @customfunction FLOW_CONSTANT
 * @helpurl https://localhost:3443/help/flow-constant.html
 * @param {any[][]} coefficient Discharge coefficient, above 0 and at most 1: one cell or a range.
 * @param {any[][]} density Density of the air, kg/m³.
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} Constant for cfm, in² and √Pa (for "si": L/s, cm² and √Pa).
 */
export function flowConstantOf(coefficient: any[][], density: any[][], units: any): any[][] {
  const system = readUnits(units);
  const rows = new Rows({ coefficient, density });
  const refuse = (value: number) =>
    aboveZero(value) ??
    (value <= 1 ? undefined : "no coefficient is above 1; a flow constant, such as 1.07, may be");
  const C = rows.numbers("coefficient", { blank: "nothing yet", refuse });
  const rho = rows.numbers("density", { refuse: beDensity });
  const constants = rows.values(system === "ip" ? constantIp : constantSi, { C, rho });
  return rows.result((i) => pick(constants, i));
}

function referenceOf(rows: Rows) {
  return rows.numbers("reference", { otherwise: reference, refuse: beDensity });
}

function beDensity(value: number): string | undefined {
  const { low, high, unit } = densityRange;
  return value >= low && value <= high
    ? undefined
    : `give ${unit} from ${low} to ${high}; 0.075 lb/ft³ is ${reference} ${unit}`;
}
