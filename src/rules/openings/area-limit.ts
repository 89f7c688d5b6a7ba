import { plain } from "../../algebra";
import { rectAreaLimit, roundAreaLimit } from "../../formulas";
import { flowToCome, limit } from "../arguments";
import { ifGiven, optional } from "../contract/argument";
import type { Help } from "../contract/help";
import { aboveZero } from "../contract/need";
import { bySum, rule as ruleOf } from "../contract/rule";
import type { NativeForm } from "../native/native";

export const rule = ruleOf({
  id: "AREA_LIMIT",
  title: "How far an opening's area may be off",
  arguments: { tolerance: limit, size1: flowToCome, size2: optional(ifGiven(aboveZero)) },
  formulas: [roundAreaLimit, rectAreaLimit],
  work: ({ tolerance: t, size1, size2: h }) =>
    h === undefined
      ? bySum(roundAreaLimit, { t, d: size1 })
      : bySum(rectAreaLimit, { t, w: size1, h }),
});

export const native: NativeForm = (native) => {
  const [t, w] = [native.near("tolerance"), native.near("size1")];
  const round = plain(roundAreaLimit, { t, d: w });
  if (!native.has("size2")) return round;
  const rect = plain(rectAreaLimit, { t, w, h: native.near("size2") });
  return `IF(${native.given("size2")},${rect},${round})`;
};

export const help: Help = {
  computes: [
    "Half the difference between the largest and the smallest area that sizes within the tolerance allow.",
    "A blank second size means a round opening.",
  ],
  result: "Half width of the area's limits, in² (cm² where the sizes are in cm).",
  examples: [
    {
      words: "A hole of 5.5 in across, measured to 1⁄16 in.",
      args: [0.0625, 5.5],
      gives: 0.539961,
      unit: "in²",
    },
  ],
  troubles: [
    { when: "The tolerance is below 0.", args: [-0.1, 5.5] },
    { when: "The tolerance is blank beside a size.", args: ["", 5.5] },
  ],
  related: ["FLOW_SPREAD", "ROUND_AREA", "RECT_AREA"],
};
