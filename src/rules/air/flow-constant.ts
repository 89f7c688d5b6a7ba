import { constantIp, constantSi } from "../../formulas";
import { units } from "../arguments";
import { needed, reading } from "../contract/argument";
import type { Help } from "../contract/help";
import { byFormula } from "../contract/rule";
import { densityNeed } from "./density";

export const rule = byFormula({
  id: "FLOW_CONSTANT",
  title: "Flow constant from the discharge coefficient",
  arguments: {
    coefficient: reading({
      above: 0,
      to: 1,
      say: "give a number above 0 and at most 1; a flow constant, such as 1.07, is no coefficient",
    }),
    density: needed(densityNeed),
    units,
  },
  formula: { ip: constantIp, si: constantSi },
  of: { C: "coefficient", rho: "density" },
});

export const help: Help = {
  computes: [
    "Use it where the opening's coefficient is known, from a handbook or a calibration, rather than its constant.",
    "The usual 1.07 is a coefficient of 0.606 at 1.2 kg/m³: neither 0.60 nor 0.61.",
  ],
  result: 'Constant for cfm, in² and √Pa (with units "si": L/s, cm² and √Pa).',
  formulas: [constantIp, constantSi],
  examples: [
    {
      words: "A coefficient of 0.6063 at 1.2 kg/m³ is the usual constant.",
      args: [0.6063, 1.2],
      gives: 1.07,
    },
  ],
  troubles: [
    { when: "A flow constant was typed as coefficient.", args: [1.07, 1.2] },
    { when: "The density was typed in lb/ft³.", args: [0.6, 0.075] },
  ],
  related: ["FLOW", "AIR_DENSITY"],
};
