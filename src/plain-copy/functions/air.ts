import { plain } from "../../algebra";
import {
  celsiusFromFahrenheit,
  constantIp,
  constantSi,
  densityFactor,
  densityMoistAir,
  densityOverIce,
  metresFromFeet,
  pascalsFromMercury,
  pressureAtElevation,
  standardFlow,
} from "../../formulas";
import { airRanges, densityRange, seaLevel, usualAir, weather } from "../../job";
import { digits, wrong } from "../native-text";
import { Guards, type Need, zeroOrMore } from "./guards";
import { bySystemFar, far } from "./names";
import type { Call, Writer } from "./writer";

type Reading = keyof typeof airRanges.ip;

const density: Need = {
  text: (x) => `AND(${x}>=${digits(densityRange.low)},${x}<=${digits(densityRange.high)})`,
  met: (x) => x >= densityRange.low && x <= densityRange.high,
  say: `give ${densityRange.unit} from ${densityRange.low} to ${densityRange.high}`,
};

const reference = digits(usualAir.reference.value);

/** The ice equation of the handbook ends here, °C. */
const mostOverIce = "0.01";

export const airDensityWriter: Writer = {
  write(call) {
    const guards = new Guards(call);
    const isSi = guards.units();
    // An error in the units is told by their own guard.
    const x = call.at("units")?.text;
    const system = typeof isSi === "string" ? `IF(ISERROR(${x}),FALSE,${isSi})` : isSi;
    const need = (name: Reading): Need => {
      const edge = (end: "low" | "high") =>
        guards.bySystem(system, digits(airRanges.ip[name][end]), digits(airRanges.si[name][end]));
      return {
        text: (x) => `AND(${x}>=${edge("low")},${x}<=${edge("high")})`,
        say: "not a value that can be meant in these units",
      };
    };
    guards.number("temperature", { blank: "nothing yet", need: need("temperature") });
    for (const name of ["humidity", "barometer", "elevation"] as const)
      if (call.has(name)) guards.number(name, { blank: "allowed", need: need(name) });
    const [h, B, z] = ["humidity", "barometer", "elevation"].map((name) => call.at(name)?.text);
    if (h) {
      const percent = wrong("humidity: type percent, such as 50");
      guards.check(`IF(ISNUMBER(${h}),IF(AND(${h}>0,${h}<1),${percent},0),0)`);
    }
    if (B && z) guards.check(meantAtPlace(guards, system, B, z));
    return guards.result(densityStep(call));
  },
};

/** 0, or an error where a barometer beside an elevation was brought down to sea level. */
function meantAtPlace(guards: Guards, system: boolean | string, B: string, z: string): string {
  const metres = guards.bySystem(system, plain(metresFromFeet, { f: z }), z);
  const pascals = guards.bySystem(system, plain(pascalsFromMercury, { B }), `(${B})*100`);
  const off = (at: string) => `ABS((${pascals})/(${plain(pressureAtElevation, { z: at })})-1)`;
  const reduced = `AND(${off("0")}<${seaLevel},${off(`(${metres})`)}>${weather})`;
  return `IF(COUNT(${B},${z})=2,IF(${reduced},${wrong("barometer: type the pressure at the place, not at sea level")},0),0)`;
}

function densityStep(call: Call): string {
  const F = far(call, "temperature");
  const [given, B, z] = (["humidity", "barometer", "elevation"] as const).map((name) =>
    far(call, name),
  ) as [string, string, string];
  const isNumber = (x: string) => `ISNUMBER(${x})`;
  const celsius = bySystemFar(call, plain(celsiusFromFahrenheit, { F }), F);
  const pascals = bySystemFar(call, plain(pascalsFromMercury, { B }), `${B}*100`);
  const height = `IF(${isNumber(z)},${bySystemFar(call, plain(metresFromFeet, { f: z }), z)},0)`;
  const usual = digits(usualAir.humidity.value);
  const steps = call.steps("air", [F, given, B, z, far(call, "units")], {
    celsius: () => celsius,
    humidity: () => `IF(${isNumber(given)},${given},${usual})/100`,
    metres: () => height,
    pascals: ({ metres }) =>
      `IF(${isNumber(B)},${pascals},${plain(pressureAtElevation, { z: metres })})`,
    density: ({ celsius: t, humidity: h, pascals: p }) =>
      `IF(${t}>${mostOverIce},${plain(densityMoistAir, { t, p, h })},${plain(densityOverIce, { t, p, h })})`,
  });
  return steps.density;
}

export const airFactorWriter: Writer = {
  write(call) {
    const guards = new Guards(call);
    const rho = guards.number("density", { blank: "nothing yet", need: density });
    const rho0 = guards.number("reference", { otherwise: reference, need: density });
    return guards.result(plain(densityFactor, { rho, rho0 }));
  },
};

export const standardFlowWriter: Writer = {
  write(call) {
    const guards = new Guards(call);
    const Q = guards.number("flow", { blank: "nothing yet", need: zeroOrMore });
    const rho = guards.number("density", { need: density });
    const rho0 = guards.number("reference", { otherwise: reference, need: density });
    return guards.result(plain(standardFlow, { Q, rho, rho0 }));
  },
};

const coefficient: Need = {
  text: (x) => `AND(${x}>0,${x}<=1)`,
  met: (x) => x > 0 && x <= 1,
  say: "give a coefficient above 0 and at most 1",
};

export const flowConstantWriter: Writer = {
  write(call) {
    const guards = new Guards(call);
    const isSi = guards.units();
    const C = guards.number("coefficient", { blank: "nothing yet", need: coefficient });
    const rho = guards.number("density", { need: density });
    const constant = (formula: typeof constantIp) => plain(formula, { C, rho });
    return guards.result(guards.bySystem(isSi, constant(constantIp), constant(constantSi)));
  },
};
