import { standardFlow } from "../../formulas";
import { needed, reading } from "../contract/argument";
import type { Help } from "../contract/help";
import { zeroOrMore } from "../contract/need";
import { byFormula } from "../contract/rule";
import { densityNeed, reference } from "./density";

export const rule = byFormula({
  id: "STANDARD_FLOW",
  title: "Flow of reference air",
  arguments: { flow: reading(zeroOrMore), density: needed(densityNeed), reference },
  formula: standardFlow,
  of: { Q: "flow", rho: "density", rho0: "reference" },
});

export const help: Help = {
  computes: [
    "Give the actual flow: what the box reads times AIR_FACTOR. The result is what the same mass of air would take up at the reference density, as fan ratings state it.",
    "Required rates are volumes of the air at hand, so far as their texts say: compare those with the actual flow.",
  ],
  result: "Flow at the reference density, in the unit of the flow given.",
  examples: [
    { words: "60 cfm of air of 1 kg/m³, as standard air.", args: [60, 1], gives: 50, unit: "cfm" },
  ],
  troubles: [
    { when: "The density is blank.", args: [60, ""] },
    { when: "The flow is below 0.", args: [-60, 1] },
  ],
  related: ["AIR_FACTOR", "AIR_DENSITY"],
};
