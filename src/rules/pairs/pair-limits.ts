import { plain } from "../../algebra";
import { agreementLimit, percentError } from "../../formulas";
import { agreementFactor, nextFactor } from "../../spread";
import type { Help } from "../contract/help";
import { rule as ruleOf } from "../contract/rule";
import { blankIfUnknown, saidIfKnown, sixDigits } from "../contract/say";
import { digits } from "../native/text";
import { agreementSource, bothFlows, errorsOf, nativeErrors } from "./errors";
import { passedOver } from "./pairs";

export const rule = ruleOf({
  id: "PAIR_LIMITS",
  title: "Limits of a box's errors",
  arguments: bothFlows,
  width: 3,
  work(flows) {
    const { n, bias, sd, low, high, nextLow, nextHigh, largest } = errorsOf(flows);
    return {
      gives: [blankIfUnknown(low), blankIfUnknown(high), largest],
      why: () => ({
        words: [
          `bias ${sixDigits(bias)} %, 1.96 standard deviations of ${saidIfKnown(sd)} % either way`,
          `the next reading, of ${n} pairs: ${saidIfKnown(nextFactor(n))} standard deviations either way, ${saidIfKnown(nextLow)} to ${saidIfKnown(nextHigh)} %, in 95 of 100 cases`,
        ],
        sources: [agreementSource],
        result: `${saidIfKnown(low)} to ${saidIfKnown(high)} %, largest error ${sixDigits(largest)} %`,
      }),
    };
  },
});

export const native = nativeErrors((percent) => {
  const limit = (z: number) => {
    const given = { B: `AVERAGE(${percent})`, z: digits(z), s: `STDEV(${percent})` };
    return `IF(COUNT(${percent})>1,${plain(agreementLimit, given)},"")`;
  };
  return [limit(-agreementFactor), limit(agreementFactor), `MAX(MAX(${percent}),-MIN(${percent}))`];
});

export const help: Help = {
  computes: [
    "Limits of agreement after Bland and Altman: the mean error, less and plus 1.96 standard deviations of the errors. Some 95 % of the errors to come lie between them, if the errors are about normal and the readings like these.",
    "Of few pairs the next reading may lie farther out, by Student's t: WORKING names both limits, 1.96 and, of five pairs, 3.04 standard deviations.",
    passedOver,
  ],
  result:
    "Three cells: low limit, %; high limit, %; the largest error among the pairs without its sign, %.",
  formulas: [percentError, agreementLimit],
  examples: [
    {
      words: "The same three pairs: 1 − 1.96 · 3 and 1 + 1.96 · 3 %, and 4 % the largest.",
      args: [
        [50.5, 78.4, 104],
        [50, 80, 100],
      ],
      gives: [-4.88, 6.88, 4],
    },
  ],
  troubles: [
    { when: "The ranges are not of one length.", args: [[25, 52], [26]] },
    { when: "A flow was typed as text.", args: [["25 cfm"], [26]] },
  ],
  related: ["PAIR_BIAS", "PAIR_CONSTANT"],
};
