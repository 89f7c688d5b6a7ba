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
} from "../../../formulas";
import { airViews } from "../../../job";
import type { Topic } from "../topic";

const shown = { leave: "leaves the flow", correct: "corrects", reference: "takes standard air" };

/** What standards and guides say, each with its mark. */
const views = airViews.map(
  ({ who, asks, words, source: { mark } }) => `${who} ${shown[asks]}: ${words} (${mark})`,
);

export const air: readonly Topic[] = [
  {
    id: "AIR_DENSITY",
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
    troubles: [
      { when: "The barometer was typed in hPa beside °F.", args: [68, 50, 1013] },
      { when: "The temperature cannot be meant.", args: [200] },
      { when: "The humidity is above 100 %.", args: [68, 120] },
    ],
    related: ["AIR_FACTOR", "STANDARD_FLOW", "FLOW_CONSTANT"],
  },
  {
    id: "AIR_FACTOR",
    computes: [
      "A constant holds for air of one density. Thinner air moves faster under the same pressure, so at a high place the actual flow is larger than the constant says: by about 10 % at 5000 ft.",
      "Standards and guides disagree on whether to correct. Say on the sheet which flow was judged.",
      ...views,
    ],
    result: "Factor. Actual flow = flow worked out with the constant × factor.",
    formulas: [densityFactor],
    troubles: [
      { when: "The density was typed in lb/ft³.", args: [0.075] },
      { when: "The density was typed as text.", args: ["1.2 kg/m³"] },
    ],
    related: ["AIR_DENSITY", "STANDARD_FLOW", "FLOW"],
  },
  {
    id: "STANDARD_FLOW",
    computes: [
      "Give the actual flow: what the box reads times AIR_FACTOR. The result is what the same mass of air would take up at the reference density, as fan ratings state it.",
      "Required rates are volumes of the air at hand, so far as their texts say: compare those with the actual flow.",
    ],
    result: "Flow at the reference density, in the unit of the flow given.",
    formulas: [standardFlow],
    troubles: [
      { when: "The density is blank.", args: [60, ""] },
      { when: "The flow is below 0.", args: [-60, 1] },
    ],
    related: ["AIR_FACTOR", "AIR_DENSITY"],
  },
  {
    id: "FLOW_CONSTANT",
    computes: [
      "Use it where the opening's coefficient is known, from a handbook or a calibration, rather than its constant.",
      "The usual 1.07 is a coefficient of 0.606 at 1.2 kg/m³: neither 0.60 nor 0.61.",
    ],
    result: 'Constant for cfm, in² and √Pa (with units "si": L/s, cm² and √Pa).',
    formulas: [constantIp, constantSi],
    troubles: [
      { when: "A flow constant was typed as coefficient.", args: [1.07, 1.2] },
      { when: "The density was typed in lb/ft³.", args: [0.6, 0.075] },
    ],
    related: ["FLOW", "AIR_DENSITY"],
  },
];
