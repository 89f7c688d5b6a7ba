import { densityFactor } from "../../formulas";
import { reading } from "../contract/argument";
import type { Help } from "../contract/help";
import { byFormula } from "../contract/rule";
import { airViews } from "./air";
import { densityNeed, reference } from "./density";

export const rule = byFormula({
  id: "AIR_FACTOR",
  title: "Factor for the air at hand",
  arguments: { density: reading(densityNeed), reference },
  formula: densityFactor,
  of: { rho0: "reference", rho: "density" },
});

const shown = { leave: "leaves the flow", correct: "corrects", reference: "takes standard air" };

export const help: Help = {
  computes: [
    "A constant holds for air of one density. Thinner air moves faster under the same pressure, so at a high place the actual flow is larger than the constant says: by about 10 % at 5000 ft.",
    "Standards and guides disagree on whether to correct. Say on the sheet which flow was judged.",
    // What standards and guides say, each with its mark.
    ...airViews.map(
      ({ who, asks, words, source: { mark } }) => `${who} ${shown[asks]}: ${words} (${mark})`,
    ),
  ],
  result: "Factor. Actual flow = flow worked out with the constant × factor.",
  examples: [
    {
      words: "Thin air of 1 kg/m³, and a constant stated for 1.2 kg/m³.",
      args: [1],
      gives: 1.09545,
    },
  ],
  troubles: [
    { when: "The density was typed in lb/ft³.", args: [0.075] },
    { when: "The density was typed as text.", args: ["1.2 kg/m³"] },
  ],
  related: ["AIR_DENSITY", "STANDARD_FLOW", "FLOW"],
};
