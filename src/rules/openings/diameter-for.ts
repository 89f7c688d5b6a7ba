import { diameterForArea } from "../../formulas";
import type { Help } from "../contract/help";
import { before, byFormula } from "../contract/rule";
import { areaUse, sizing } from "./area-for";

export const rule = byFormula({
  id: "DIAMETER_FOR",
  title: "Round hole for a flow",
  arguments: sizing,
  uses: [[areaUse, { formula: diameterForArea, of: { A: before } }]],
});

export const help: Help = {
  computes: ["The area of AREA_FOR, as one circle."],
  result: 'Diameter, in (cm with units "si").',
  examples: [
    {
      words: "The same fan, and the opening is to be one round hole.",
      args: [50, 4],
      gives: 5.45423,
    },
  ],
  troubles: [
    { when: "The flow is below 0.", args: [-50] },
    { when: "The units are neither ip nor si.", args: [50, 4, null, "metric"] },
  ],
  related: ["AREA_FOR", "ROUND_AREA"],
};
