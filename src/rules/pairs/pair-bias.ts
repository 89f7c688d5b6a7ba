import { percentError } from "../../formulas";
import type { Help } from "../contract/help";
import { rule as ruleOf } from "../contract/rule";
import { blankIfUnknown, saidIfKnown, sixDigits } from "../contract/say";
import { agreementSource, bothFlows, errorsOf, nativeErrors } from "./errors";
import { passedOver } from "./pairs";

export const rule = ruleOf({
  id: "PAIR_BIAS",
  title: "How far a box is off on average",
  arguments: bothFlows,
  width: 3,
  work(flows) {
    const { bias, sd, n } = errorsOf(flows);
    return {
      gives: [bias, blankIfUnknown(sd), n],
      why: () => ({
        words: [`${n} errors of the box in % of the reference: their mean and standard deviation`],
        sources: [agreementSource],
        result: `bias ${sixDigits(bias)} %, standard deviation ${saidIfKnown(sd)} %, ${n} pairs`,
      }),
    };
  },
});

export const native = nativeErrors((percent) => [
  `AVERAGE(${percent})`,
  `IF(COUNT(${percent})>1,STDEV(${percent}),"")`,
  `COUNT(${percent})`,
]);

export const help: Help = {
  computes: [
    "The error of each pair is the box's flow less the reference's, in percent of the reference. Their mean says how far the box is off altogether, their standard deviation how well single readings keep to that.",
    passedOver,
  ],
  result: "Three cells: mean error, %; standard deviation of the errors, %; number of pairs.",
  formulas: [percentError],
  examples: [
    {
      words: "Three pairs: the box is off by 1, −2 and 4 %.",
      args: [
        [50.5, 78.4, 104],
        [50, 80, 100],
      ],
      gives: [1, 3, 3],
    },
  ],
  troubles: [
    { when: "The ranges are not of one length.", args: [[25, 52], [26]] },
    { when: "A reference flow is below 0.", args: [[25], [-26]] },
  ],
  related: ["PAIR_LIMITS", "PAIR_CONSTANT"],
};
