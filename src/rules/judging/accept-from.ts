import { plain } from "../../algebra";
import { acceptanceLimit } from "../../formulas";
import { acceptFrom, normalQuantile } from "../../spread";
import { usualGuardChance } from "../constants";
import { needed, optional, orElse, reading } from "../contract/argument";
import type { Help } from "../contract/help";
import { rule as ruleOf } from "../contract/rule";
import type { NativeForm } from "../native/native";
import { chanceNeed, spreadNeed } from "./chance";

export const rule = ruleOf({
  id: "ACCEPT_FROM",
  title: "Least flow that is accepted",
  arguments: {
    required: reading(),
    spread: needed(spreadNeed),
    chance: optional(orElse(usualGuardChance, chanceNeed)),
  },
  formulas: [acceptanceLimit],
  work: ({ required: R, spread: u, chance }) => ({
    gives: acceptFrom(R, u, chance),
    why: () => ({
      sums: [{ formula: acceptanceLimit, given: { R, z: normalQuantile(chance), u } }],
      words: [`z is the normal quantile of ${chance}`],
    }),
  }),
});

export const native: NativeForm = (native) => {
  const [R, u] = [native.near("required"), native.near("spread")];
  return plain(acceptanceLimit, { R, u, z: `NORMSINV(${native.near("chance")})` });
};

export const help: Help = {
  computes: [
    "A flow measured at this limit or above is truly at the rate or above with the chance asked for. At a chance of 0.5 the limit is the rate itself.",
  ],
  result: "Acceptance limit, in the unit of the rate.",
  examples: [
    {
      words: "From which reading on 50 cfm are met with a chance of 95 %.",
      args: [50, 1.46888],
      gives: 52.4161,
      unit: "cfm",
    },
  ],
  troubles: [
    { when: "The chance is 1: no reading is that sure.", args: [50, 1.47, 1] },
    { when: "The chance was given in percent.", args: [50, 1.47, 95] },
  ],
  related: ["CHANCE_MET", "VERDICT"],
};
