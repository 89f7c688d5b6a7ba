import { oneValue, plain } from "../../algebra";
import { rateWithMargin } from "../../formulas";
import { flowToCome } from "../arguments";
import { ifGiven, type NumbersArgument } from "../contract/argument";
import type { Help } from "../contract/help";
import { aboveZero, type Need } from "../contract/need";
import { rule as ruleOf } from "../contract/rule";
import type { NativeForm } from "../native/native";

const ratings: NumbersArgument = { kind: "numbers", need: aboveZero };
const marginNeed: Need = { from: 0, say: "give a margin of 0 or more, in per cent" };

/** So much of a rate is rounding: 50 with 10 % more is met by a fan of 55. */
const roundOff = 1e-9;

/** Rates and ratings in one unit, the margin in per cent; the ratings may stand in any order. */
export const rule = ruleOf({
  id: "FAN_SIZE",
  title: "Smallest rated flow that will do",
  arguments: { required: flowToCome, margin: ifGiven(marginNeed), ratings },
  formulas: [rateWithMargin],
  work({ required: R, margin: s = 0, ratings }) {
    const least = oneValue(rateWithMargin, { R, s }) * (1 - roundOff);
    const ascending = [...ratings].sort((a, b) => a - b);
    const largest = ascending.at(-1);
    const none =
      largest === undefined ? "no rating in the list" : `none in the list, largest ${largest}`;
    return {
      gives: ascending.find((rating) => rating >= least) ?? none,
      why: () => ({
        sums: [{ formula: rateWithMargin, given: { R, s } }],
        words: [`the least of ${ratings.length} ratings that is not below it`],
      }),
    };
  },
});

export const native: NativeForm = (native) => {
  const { text: list } = native.call.list("ratings");
  const s = native.or("margin", "0");
  const least = `(${plain(rateWithMargin, { R: native.near("required"), s })})*(1-1E-9)`;
  const enough = `SUMPRODUCT(ISNUMBER(${list})*(${list}>=${least}))`;
  const rated = `IF(${enough}=0,"none in the list, largest "&MAX(${list}),LARGE(${list},${enough}))`;
  return `IF(MAX(${list})=0,"no rating in the list",${rated})`;
};

export const help: Help = {
  computes: [
    "For choosing fans before they are bought. The margin is yours: for the duct, the terminal and the years. A rating equal to the rate with its margin will do.",
    "The list may stand in any order; blank cells of it are passed over.",
  ],
  result: 'The rated flow to buy; "none in the list, largest …" where no fan will do.',
  examples: [
    {
      words: "50 cfm are asked for, 20 % are added, and fans are rated 50, 80 and 110 cfm.",
      args: [50, 20, [50, 80, 110]],
      gives: 80,
      unit: "cfm",
    },
  ],
  troubles: [
    { when: "A rating was typed with its unit.", args: [50, 10, [50, "80 cfm"]] },
    { when: "The margin is below 0.", args: [50, -10, [50, 80]] },
    { when: "The required rate is below 0.", args: [-50, 10, [50, 80]] },
  ],
  related: ["ROOM_RATE", "EXPECTED_OPENING"],
};
