import { areaForFlow } from "../../formulas";
import { constant, flowToCome, units } from "../arguments";
import { optional, orElse } from "../contract/argument";
import type { Help } from "../contract/help";
import { aboveZero } from "../contract/need";
import { byFormula } from "../contract/rule";
import { aimedPressure } from "../flow/aimed-pressure";

export const sizing = {
  flow: flowToCome,
  pressure: optional(orElse(aimedPressure, aboveZero)),
  constant: optional(constant),
  units,
} as const;
export const areaUse = { formula: areaForFlow, of: { Q: "flow", P: "pressure", K: "constant" } };

export const rule = byFormula({
  id: "AREA_FOR",
  title: "Open area for a flow",
  arguments: sizing,
  ...areaUse,
});

export const help: Help = {
  computes: ["Use it to size a new box, or to choose an opening before a visit."],
  result: 'Open area, in² (cm² with units "si").',
  examples: [
    {
      words: "A bath fan of about 50 cfm is to hold the box at 4 Pa.",
      args: [50, 4],
      gives: 23.3645,
    },
  ],
  troubles: [
    { when: "The flow is below 0.", args: [-50] },
    { when: "The wanted pressure is 0.", args: [50, 0] },
    { when: "The units are neither ip nor si.", args: [50, 4, null, "cfm"] },
  ],
  related: ["DIAMETER_FOR", "REACH", "BOX_PRESSURE"],
};
