import { plain } from "../../algebra";
import type { System } from "../../editions";
import {
  celsiusFromFahrenheit,
  densityMoistAir,
  densityOverIce,
  metresFromFeet,
  pascalsFromMercury,
  pressureAtElevation,
} from "../../formulas";
import { units } from "../arguments";
import { ifGiven, optional, reading } from "../contract/argument";
import type { Help } from "../contract/help";
import type { Need } from "../contract/need";
import { rule as ruleOf, type Sum } from "../contract/rule";
import { sum } from "../contract/ruling";
import type { Native, NativeForm } from "../native/native";
import { digits, wrong } from "../native/text";
import { type AirReading, airRanges, airState, seaLevel, usualAir, weather } from "./air";

function within(name: keyof AirReading): Record<System, Need> {
  const need = (system: System, other: System): Need => {
    const { low, high, unit } = airRanges[system][name];
    const theirs = airRanges[other][name].unit;
    const hint = theirs === unit ? "" : ` (${theirs} with units "${other}")`;
    return { from: low, to: high, say: `give ${unit} from ${low} to ${high}${hint}` };
  };
  return { ip: need("ip", "si"), si: need("si", "ip") };
}

export const rule = ruleOf({
  id: "AIR_DENSITY",
  title: "Density of the air",
  arguments: {
    temperature: reading(within("temperature")),
    humidity: optional(ifGiven(within("humidity"))),
    barometer: optional(ifGiven(within("barometer"))),
    elevation: optional(ifGiven(within("elevation"))),
    units,
  },
  work({ units, temperature, humidity, barometer, elevation }) {
    const ip = units === "ip";
    const state = airState(
      {
        temperature,
        ...(humidity === undefined ? {} : { humidity }),
        ...(barometer === undefined ? {} : { barometer }),
        ...(elevation === undefined ? {} : { elevation }),
      },
      units,
    );
    const why = () => {
      const sums: Sum[] = [];
      if (ip) sums.push(sum(celsiusFromFahrenheit, { F: temperature }));
      if (barometer === undefined) {
        const z = (elevation ?? 0) * (ip ? 0.3048 : 1);
        if (ip) sums.push(sum(metresFromFeet, { f: elevation ?? 0 }));
        sums.push(sum(pressureAtElevation, { z }));
      } else if (ip) sums.push(sum(pascalsFromMercury, { B: barometer }));
      sums.push(sum(state.formula, state.given));
      const words =
        humidity === undefined ? [`${usualAir.humidity.value} % humidity stands in`] : [];
      return { sums, words };
    };
    return { gives: state.density, why };
  },
});

/** The ice equation of the handbook ends here, °C. */
const mostOverIce = "0.01";

/** Errors for a humidity typed as a fraction and a barometer brought down to sea level. */
function checkMeant(native: Native): void {
  const [h, B, z] = native.all("near", "humidity", "barometer", "elevation");
  if (native.has("humidity")) {
    const percent = wrong("humidity: type percent, such as 50");
    native.check(`IF(ISNUMBER(${h}),IF(AND(${h}>0,${h}<1),${percent},0),0)`);
  }
  if (!native.has("barometer") || !native.has("elevation")) return;
  const metres = native.bySystem(plain(metresFromFeet, { f: z }), z);
  const pascals = native.bySystem(plain(pascalsFromMercury, { B }), `(${B})*100`);
  const off = (at: string) => `ABS((${pascals})/(${plain(pressureAtElevation, { z: at })})-1)`;
  const reduced = `AND(${off("0")}<${seaLevel},${off(`(${metres})`)}>${weather})`;
  const flaw = wrong("barometer: type the pressure at the place, not at sea level");
  native.check(`IF(COUNT(${B},${z})=2,IF(AND(${B}<>0,${reduced}),${flaw},0),0)`);
}

export const native: NativeForm = (native) => {
  checkMeant(native);
  const [F, given, B, z] = native.all("far", "temperature", "humidity", "barometer", "elevation");
  const isNumber = (x: string) => `ISNUMBER(${x})`;
  const celsius = native.bySystemFar(plain(celsiusFromFahrenheit, { F }), F);
  const pascals = native.bySystemFar(plain(pascalsFromMercury, { B }), `${B}*100`);
  const height = `IF(${isNumber(z)},${native.bySystemFar(plain(metresFromFeet, { f: z }), z)},0)`;
  const usual = digits(usualAir.humidity.value);
  const steps = native.call.steps("air", [F, given, B, z, native.far("units")], {
    celsius: () => celsius,
    humidity: () => `IF(${isNumber(given)},${given},${usual})/100`,
    metres: () => height,
    pascals: ({ metres }) =>
      `IF(${native.given("barometer", "far")},${pascals},${plain(pressureAtElevation, { z: metres })})`,
    density: ({ celsius: t, humidity: h, pascals: p }) =>
      `IF(${t}>${mostOverIce},${plain(densityMoistAir, { t, p, h })},${plain(densityOverIce, { t, p, h })})`,
  });
  return steps.density;
};

export const help: Help = {
  computes: [
    "A barometer reading wins. Give the pressure at the place itself: a weather report's is brought down to sea level and would put the air of a high place down there too.",
    "Without a barometer the standard atmosphere at the elevation is taken, which the weather moves by about 3 % either way; without an elevation, sea level.",
    "Humidity matters little: between dry and wet air at 20 °C the density differs by less than 1 %.",
  ],
  result:
    "Density in kg/m³, whichever the units of the arguments; 1.2 kg/m³ is 0.075 lb/ft³, the standard air of fan ratings (from memory).",
  formulas: [
    densityMoistAir,
    densityOverIce,
    pressureAtElevation,
    celsiusFromFahrenheit,
    pascalsFromMercury,
    metresFromFeet,
  ],
  examples: [
    {
      words: "A room of 68 °F and 50 % at 5280 ft, where no barometer was read.",
      args: [68, 50, null, 5280],
      gives: 0.986203,
    },
  ],
  troubles: [
    { when: "The barometer was typed in hPa beside °F.", args: [68, 50, 1013] },
    { when: "The temperature cannot be meant.", args: [200] },
    { when: "The humidity is above 100 %.", args: [68, 120] },
  ],
  related: ["AIR_FACTOR", "STANDARD_FLOW", "FLOW_CONSTANT"],
};
