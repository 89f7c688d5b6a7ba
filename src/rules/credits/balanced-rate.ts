import { oneValue, plain } from "../../algebra";
import { balancedRules, findRule } from "../../editions";
import { balancedRate } from "../../formulas";
import { code, flowToCome } from "../arguments";
import { named } from "../contract/argument";
import type { Help } from "../contract/help";
import { aboveZero, must } from "../contract/need";
import { rule as ruleOf } from "../contract/rule";
import { flowUnits, RequiredRate, sum } from "../contract/ruling";
import { answered } from "../contract/yes-no";
import type { NativeForm } from "../native/native";
import { balancedReductions } from "../native/tables/credits";

/** Both balanced and ducted as the code states it, one of the two, or neither. */
export type SystemKind = boolean | "one";

const sayWhich = 'say "yes", "one" or "no"';

export const readSystemKind = (text: string, name: string): SystemKind =>
  text.trim().toLowerCase() === "one" ? "one" : answered(text, name, sayWhich);

/** The dwelling rate of a code where the system is balanced and ducted as it states, or is not. */
export function rateIfBalanced(code: string, rate: number, system: SystemKind): RequiredRate {
  const rule = findRule("reduction for balanced systems", balancedRules, code);
  const { reduction, increase, source } = rule;
  must("rate", rate, aboveZero);
  const more = system === "one" ? increase?.one : increase?.neither;
  const given = { T: rate, r: system === true ? reduction : -(more ?? 0) };
  return new RequiredRate(oneValue(balancedRate, given), source, "ip", [sum(balancedRate, given)]);
}

export const rule = ruleOf({
  id: "BALANCED_RATE",
  title: "Dwelling rate of a balanced and ducted system",
  arguments: {
    edition: code,
    rate: flowToCome,
    balancedDucted: named(readSystemKind, sayWhich),
  },
  work: ({ edition, rate, balancedDucted }) =>
    rateIfBalanced(edition, rate, balancedDucted).answer(flowUnits),
});

export const native: NativeForm = (native) => {
  const rule = native.rowWhere(balancedReductions, { "Edition no.": native.number("edition") });
  const system = native.text("balancedDucted");
  const r = `IF(LOWER(${system})="one",-${rule.of("Increase of one")},IF(${native.yesNo("balancedDucted")}=1,${rule.of("Reduction")},-${rule.of("Increase")}))`;
  return rule.orNone(plain(balancedRate, { T: native.near("rate"), r }));
};

export const help: Help = {
  computes: [
    "IRC and IMC take 30 % off the dwelling rate of a system that is balanced and ducted to the rooms that the code names.",
    'Washington multiplies by a coefficient: 1 for a system that is both balanced and distributed ("yes"), 1.25 where it is one of the two ("one"), 1.5 where it is neither ("no").',
    "Verify against your own copy of the edition that applies.",
  ],
  result: "Rate after the reduction, in the unit of the rate.",
  formulas: [balancedRate],
  source: { work: "IRC 2021", clause: "M1505.4.3, exception", mark: "read" },
  examples: [
    {
      words: "60 cfm, by a balanced system with ducts to the rooms.",
      args: ["IRC-2021", 60, "yes"],
      gives: 42,
      unit: "cfm",
    },
  ],
  troubles: [
    { when: "The edition has no such reduction.", args: ["62.2-2016", 60, "yes"] },
    { when: "It is not said whether it is balanced.", args: ["IRC-2021", 60, ""] },
  ],
  related: ["DWELLING_RATE"],
};
