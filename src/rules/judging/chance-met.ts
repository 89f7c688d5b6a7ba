import { margin, type Source } from "../../formulas";
import { chanceMet } from "../../spread";
import { needed, reading } from "../contract/argument";
import type { Help } from "../contract/help";
import { rule as ruleOf, sumValue } from "../contract/rule";
import { sixDigits } from "../contract/say";
import type { NativeForm } from "../native/native";
import { distributionSaid, freedomGiven, nativeChance, spreadNeed } from "./chance";

const conformity: Source = { work: "JCGM 106:2012", clause: "7.3.1", mark: "from memory" };

export const rule = ruleOf({
  id: "CHANCE_MET",
  title: "Chance that the required rate is met",
  arguments: {
    flow: reading(),
    spread: needed(spreadNeed),
    required: needed(),
    freedom: freedomGiven,
  },
  formulas: [margin],
  work({ flow: Q, spread: u, required: R, freedom }) {
    const sum = { formula: margin, given: { Q, R } };
    const spreads = () => (u > 0 ? `${sixDigits(sumValue(sum) / u)} spreads` : "no spread");
    return {
      gives: chanceMet(Q, u, R, freedom),
      why: () => ({
        sums: [sum],
        words: [
          `the flow lies ${spreads()} from the rate; the chance is ${distributionSaid(freedom)}`,
        ],
        sources: [conformity],
        unit: "1",
      }),
    };
  },
});

export const native: NativeForm = nativeChance;

export const help: Help = {
  computes: [
    "How likely it is that the flow, as it truly is, reaches the required rate: the part of a normal curve about the measured flow that lies above the rate (JCGM 106:2012). A flow equal to the rate gives 0.5, however good the manometer.",
    "Where the spread rests on few readings, give its degrees of freedom, the second cell of FLOW_SPREAD: the curve is then Student's t, cut down to a whole number of them, which asks for more (JCGM 101:2008, 6.4.9).",
  ],
  result: "A chance, 0 to 1.",
  source: conformity,
  examples: [
    {
      words:
        "51.36 cfm with a standard spread of 1.46888 cfm: the chance that it is truly 50 cfm or more.",
      args: [51.36, 1.46888, 50],
      gives: 0.822745,
    },
    {
      words: "The same where the spread rests on three readings: two degrees of freedom.",
      args: [51.36, 1.46888, 50, 2],
      gives: 0.773873,
    },
  ],
  troubles: [
    { when: "The spread is blank.", args: [51.36, "", 50] },
    { when: "The spread is below 0.", args: [51.36, -1, 50] },
    { when: "A single reading has no degree of freedom.", args: [51.36, 1.47, 50, 0.5] },
  ],
  related: ["ACCEPT_FROM", "FLOW_SPREAD", "VERDICT"],
};
