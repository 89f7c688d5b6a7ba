import {
  celsiusFromFahrenheit,
  constantIp,
  constantSi,
  densityFactor,
  metresFromFeet,
  pascalsFromMercury,
  pressureAtElevation,
  standardFlow,
} from "../../formulas";
import { type AirReading, airRanges, airState, densityRange, usualAir } from "../rules";
import { aboveZero, type Given, notNegative } from "./given";
import type { Sum, Working } from "./working";

const density = { refuse: between(densityRange) };
const coefficient = {
  refuse: (value: number) =>
    aboveZero(value) ??
    (value <= 1 ? undefined : "no coefficient is above 1; a flow constant, such as 1.07, may be"),
};

export const air = {
  AIR_DENSITY: {
    title: "Density of the air",
    takes: ["temperature", "humidity", "barometer", "elevation", "units"],
    explain: (given) => {
      const { system = "ip" } = given;
      const ranges = airRanges[system];
      const read = (name: keyof AirReading) =>
        given.optionalNumber(name, { refuse: between(ranges[name]) });
      const temperature = given.number("temperature", { refuse: between(ranges.temperature) });
      const humidity = read("humidity");
      const barometer = read("barometer");
      const elevation = read("elevation");
      const state = airState(
        {
          temperature,
          ...(humidity === undefined ? {} : { humidity }),
          ...(barometer === undefined ? {} : { barometer }),
          ...(elevation === undefined ? {} : { elevation }),
        },
        system,
      );
      const ip = system === "ip";
      const sums: Sum[] = [];
      if (ip) sums.push({ formula: celsiusFromFahrenheit, given: { F: temperature } });
      if (barometer !== undefined) {
        if (ip) sums.push({ formula: pascalsFromMercury, given: { B: barometer } });
      } else {
        const z = (elevation ?? 0) * (ip ? 0.3048 : 1);
        if (ip) sums.push({ formula: metresFromFeet, given: { f: elevation ?? 0 } });
        sums.push({ formula: pressureAtElevation, given: { z } });
      }
      sums.push({ formula: state.formula, given: state.given });
      return {
        sums,
        words: humidity === undefined ? [`${usualAir.humidity.value} % humidity stands in`] : [],
        gives: [state.density],
        unit: "kg/m³",
      };
    },
  },
  AIR_FACTOR: {
    title: "Factor for the air at hand",
    takes: ["density", "reference"],
    formulas: [densityFactor],
    explain: (given) => ({
      sums: [
        {
          formula: densityFactor,
          given: { rho0: referenceOf(given), rho: given.number("density", density) },
        },
      ],
    }),
  },
  STANDARD_FLOW: {
    title: "Flow of reference air",
    takes: ["flow", "density", "reference"],
    formulas: [standardFlow],
    explain: (given) => {
      const Q = given.number("flow", { refuse: notNegative });
      const rho = given.number("density", density);
      return { sums: [{ formula: standardFlow, given: { Q, rho, rho0: referenceOf(given) } }] };
    },
  },
  FLOW_CONSTANT: {
    title: "Flow constant from the discharge coefficient",
    takes: ["coefficient", "density", "units"],
    formulas: [constantIp],
    explain: (given) => {
      const C = given.number("coefficient", coefficient);
      const rho = given.number("density", density);
      const formula = given.system === "si" ? constantSi : constantIp;
      return { sums: [{ formula, given: { C, rho } }] };
    },
  },
} satisfies Record<string, Working>;

function referenceOf(given: Given): number {
  return given.number("reference", { otherwise: usualAir.reference.value, ...density });
}

function between({ low, high, unit }: { low: number; high: number; unit: string }) {
  return (value: number) =>
    value >= low && value <= high ? undefined : `give ${unit} from ${low} to ${high}`;
}
