import { oneValue } from "../../algebra";
import { InputError } from "../../cells";
import { deviceFlow as deviceFlowFormula } from "../../formulas";
import { area } from "../arguments";
import { optional, orElse, reading } from "../contract/argument";
import type { Help } from "../contract/help";
import { zeroOrMore } from "../contract/need";
import { byFormula } from "../contract/rule";
import { exponentNeed } from "./exponent";
import { toldInstruments } from "./told-instruments";

/** constant × reading ^ exponent, in the flow unit of the constant. */
export function deviceFlow(reading: number, constant: number, exponent: number): number {
  return oneValue(deviceFlowFormula, { K: constant, r: reading, n: exponent });
}

export const rule = byFormula({
  id: "DEVICE_FLOW",
  title: "Flow from the reading of a device",
  arguments: {
    reading: reading(zeroOrMore),
    constant: area,
    exponent: optional(orElse(1, exponentNeed)),
  },
  formula: deviceFlowFormula,
  of: { K: "constant", r: "reading", n: "exponent" },
  check({ reading, exponent }) {
    if (reading === 0 && exponent < 0)
      throw new InputError(`reading 0: give a number above 0 with exponent ${exponent}`);
  },
});

export const help: Help = {
  computes: [
    "One rule serves every instrument. A hood that shows a flow has the constant 1 and the exponent 1; a device that shows a pressure has an exponent of about 0.5; a time has −1. Constant and exponent stand in the device's own record, one pair for each of its settings.",
    ...toldInstruments("powered hood", "passive hood", "range device", "direct entry"),
  ],
  result: "Flow, in the unit for which the constant is stated.",
  examples: [
    {
      words: "A device of constant 25.68 and exponent 0.5 shows 4 Pa.",
      args: [4, 25.68, 0.5],
      gives: 51.36,
      unit: "cfm",
    },
  ],
  troubles: [
    { when: "The reading is below 0.", args: [-4, 25.68, 0.5] },
    { when: "The constant is blank.", args: [4, "", 0.5] },
    { when: "The exponent is 0.", args: [4, 25.68, 0] },
  ],
  related: ["DEVICE_SPREAD", "BAG_FLOW", "FLOW"],
};
