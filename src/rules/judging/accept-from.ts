import { plain } from "../../algebra";
import { acceptanceLimit } from "../../formulas";
import { acceptFrom, studentQuantile, wholeDegrees } from "../../spread";
import { usualGuardChance } from "../constants";
import { needed, optional, orElse, reading } from "../contract/argument";
import type { Help } from "../contract/help";
import { rule as ruleOf } from "../contract/rule";
import type { NativeForm } from "../native/native";
import { chanceNeed, distributionSaid, freedomGiven, nativeQuantile, spreadNeed } from "./chance";

export const rule = ruleOf({
  id: "ACCEPT_FROM",
  title: "Least flow that is accepted",
  arguments: {
    required: reading(),
    spread: needed(spreadNeed),
    chance: optional(orElse(usualGuardChance, chanceNeed)),
    freedom: freedomGiven,
  },
  formulas: [acceptanceLimit],
  work: ({ required: R, spread: u, chance, freedom = Number.POSITIVE_INFINITY }) => ({
    gives: acceptFrom(R, u, chance, freedom),
    why: () => ({
      sums: [
        {
          formula: acceptanceLimit,
          given: { R, z: studentQuantile(chance, wholeDegrees(freedom)), u },
        },
      ],
      words: [`z is the quantile of ${chance}; the distribution is ${distributionSaid(freedom)}`],
    }),
  }),
});

export const native: NativeForm = (native) => {
  const [R, u] = [native.near("required"), native.near("spread")];
  return plain(acceptanceLimit, { R, u, z: nativeQuantile(native) });
};

export const help: Help = {
  computes: [
    "A flow measured at this limit or above is truly at the rate or above with the chance asked for. At a chance of 0.5 the limit is the rate itself.",
    "With few degrees of freedom behind the spread the limit lies further off: Student's t in place of the normal curve.",
  ],
  result: "Acceptance limit, in the unit of the rate.",
  examples: [
    {
      words: "From which reading on 50 cfm are met with a chance of 95 %.",
      args: [50, 1.46888],
      gives: 52.4161,
      unit: "cfm",
    },
    {
      words: "The same where the spread rests on three readings: two degrees of freedom.",
      args: [50, 1.46888, 0.95, 2],
      gives: 54.2891,
      unit: "cfm",
    },
  ],
  troubles: [
    { when: "The chance is 1: no reading is that sure.", args: [50, 1.47, 1] },
    { when: "The chance was given in percent.", args: [50, 1.47, 95] },
  ],
  related: ["CHANCE_MET", "VERDICT"],
};
