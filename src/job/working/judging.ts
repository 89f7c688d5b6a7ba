import { acceptanceLimit, margin, meetsCode, type Source } from "../../formulas";
import { acceptFrom, chanceMet, normalQuantile } from "../../spread";
import { readStatus, usualGuardChance, verdictColumn } from "../rules";
import { notNegative } from "./given";
import { sixDigits, sumValue } from "./say";
import type { Grounds, Working } from "./working";

const chanceRange = {
  otherwise: usualGuardChance,
  refuse: (value: number) =>
    value >= 0.5 && value < 1 ? undefined : "give a chance from 0.5 to below 1, such as 0.95",
};
const spreadRange = { refuse: notNegative };
const conformity: Source = { work: "JCGM 106:2012", clause: "7.3.1", mark: "from memory" };

export const judging = {
  VERDICT: {
    title: "Whether a flow meets its required rate",
    takes: ["flow", "required", "status", "spread", "chance"],
    formulas: [margin],
    explain: (given) => {
      const flow = given.optionalNumber("flow");
      const required = given.number("required");
      const status = readStatus(given.optionalText("status"));
      const spread = given.optionalNumber("spread", spreadRange) ?? Number.NaN;
      const chance = given.optionalNumber("chance", chanceRange) ?? usualGuardChance;
      if (flow === undefined)
        return plain("there is no flow to judge", "not measured", meetsCode.source);
      const [verdict = ""] = verdictColumn(flow, required, 1, [status], { spread, chance });
      if (verdict === "retest")
        return plain(`a reading that is ${status} carries no verdict`, verdict, meetsCode.source);
      const sums = [{ formula: margin, given: { Q: flow, R: required } }];
      if (Number.isNaN(spread))
        return {
          sums,
          words: ["simple acceptance: no tolerance below the rate"],
          sources: [meetsCode.source],
          gives: [verdict],
        };
      const met = sixDigits(chanceMet(flow, spread, required));
      return {
        sums,
        words: [
          `guarded acceptance: with a spread of ${sixDigits(spread)} the chance that the rate is met is ${met}, where ${chance} is asked for either way`,
        ],
        sources: [acceptanceLimit.source],
        gives: [verdict],
      };
    },
  },
  CHANCE_MET: {
    title: "Chance that the required rate is met",
    takes: ["flow", "spread", "required"],
    formulas: [margin],
    explain: (given) => {
      const Q = given.number("flow");
      const u = given.number("spread", spreadRange);
      const R = given.number("required");
      const sum = { formula: margin, given: { Q, R } };
      const spreads = u > 0 ? `${sixDigits(sumValue(sum) / u)} spreads` : "no spread";
      return {
        sums: [sum],
        words: [`the flow lies ${spreads} from the rate; the chance is the normal one`],
        sources: [conformity],
        gives: [chanceMet(Q, u, R)],
      };
    },
  },
  ACCEPT_FROM: {
    title: "Least flow that is accepted",
    takes: ["required", "spread", "chance"],
    formulas: [acceptanceLimit],
    explain: (given) => {
      const R = given.number("required");
      const u = given.number("spread", spreadRange);
      const chance = given.number("chance", chanceRange);
      return {
        sums: [{ formula: acceptanceLimit, given: { R, z: normalQuantile(chance), u } }],
        words: [`z is the normal quantile of ${chance}`],
        gives: [acceptFrom(R, u, chance)],
      };
    },
  },
} satisfies Record<string, Working>;

function plain(words: string, verdict: string, source: Source): Grounds {
  return { words: [words], sources: [source], gives: [verdict] };
}
