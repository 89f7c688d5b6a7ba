import { type BalanceLimit, balanceRules, findAnyEdition, type System } from "../../editions";
import { units } from "../arguments";
import { named, reading } from "../contract/argument";
import type { Help } from "../contract/help";
import { zeroOrMore } from "../contract/need";
import { rule as ruleOf } from "../contract/rule";
import { flowUnits, Ruling, statedIn } from "../contract/ruling";
import { withUnit } from "../contract/say";
import type { NativeForm } from "../native/native";
import { balanceLimits } from "../native/tables/credits";
import { wrong } from "../native/text";
import type { Balance } from "../outcomes";

/** A sum and a difference of decimals may miss their limit by a last digit. */
const roundOff = 1e-9;

/**
 * Whether the supply and the exhaust of a dwelling, in one unit, are near enough to each other to
 * count as balanced; undefined where the code does not define it. A code may define it twice.
 */
export function balanceOf(
  code: string,
  supply: number,
  exhaust: number,
  system: System,
): Ruling<Balance> | undefined {
  const rule = balanceRules.find((each) => each.code === code);
  if (!rule) return undefined;
  const told = [rule, ...(rule.also ? [rule.also] : [])].map((limit) =>
    judged(limit, supply, exhaust, system, code),
  );
  const met = told.filter(({ isMet }) => isMet).length;
  const value = met === 0 ? "not balanced" : met === told.length ? "balanced" : "by one definition";
  return new Ruling(
    value,
    rule.source,
    system,
    told.map(({ words }) => words),
  );
}

function judged(limit: BalanceLimit, S: number, E: number, system: System, code: string) {
  const share = limit.within * (limit.of === "supply" ? S : S + E);
  const fixed = limit.orFlow ? statedIn(limit.orFlow, system, code) : 0;
  const most = Math.max(share, fixed);
  const apart = Math.abs(E - S);
  const isMet = apart <= most + roundOff;
  const [own, allowed] = [apart, most].map((each) => withUnit(each, flowUnits, system));
  const base = limit.of === "supply" ? "of the supply" : "of supply and exhaust together";
  const words = `${own} apart, ${isMet ? "within" : "more than"} ${allowed} (${100 * limit.within} % ${base}${fixed > 0 ? `, or ${withUnit(fixed, flowUnits, system)} if more` : ""}; ${limit.source.clause})`;
  return { isMet, words };
}

export const rule = ruleOf({
  id: "BALANCE",
  title: "Whether supply and exhaust are balanced",
  arguments: {
    edition: named(findAnyEdition, "name one, such as IRC-2021", "edition"),
    supply: reading(zeroOrMore),
    exhaust: reading(zeroOrMore),
    units,
  },
  work: ({ edition, supply, exhaust, units }) =>
    balanceOf(edition.id, supply, exhaust, units)?.answer() ?? {
      gives: "no rule",
      why: () => ({ words: [`${edition.id} does not define balanced ventilation`] }),
    },
});

export const native: NativeForm = (native) => {
  const [S, E] = [native.near("supply"), native.near("exhaust")];
  const no = native.number("edition");
  const limit = (definition: number) => {
    const rule = native.rowWhere(balanceLimits, {
      "Edition no.": no,
      Definition: String(definition),
    });
    const base = `IF(${rule.of("Of the supply")}=1,${S},${S}+${E})`;
    const fixed = rule.of("Or flow");
    const orFlow = native.bySystem(fixed, `IF(${fixed}=0,0,${wrong("stated in cfm only")})`);
    const most = `MAX(${rule.of("Within")}*${base},${orFlow})`;
    return { row: rule.row, isMet: `IF(ABS(${E}-${S})<=${most}+${roundOff},1,0)` };
  };
  const [one, two] = [limit(1), limit(2)];
  const both = `${one.isMet}+IF(${two.row}=0,${one.isMet},${two.isMet})`;
  return `IF(${no}=0,${native.number("edition")},IF(${one.row}=0,"no rule",CHOOSE(1+${both},"not balanced","by one definition","balanced")))`;
};

export const help: Help = {
  computes: [
    "A balanced system brings in as much air as it takes out. How near the two must be, an edition may define: within 10 % of the supply, or of their average, or within a fixed flow.",
    'IRC 2021 has two definitions, of which one lets about twice as much through: where they disagree the answer is "by one definition". Ask the code official which one counts.',
  ],
  result:
    '"balanced", "not balanced", "by one definition", or "no rule" where the edition has none.',
  formulas: [],
  source: { work: "IRC 2021", clause: "R202", mark: "read" },
  examples: [
    {
      words: "100 cfm in and 85 cfm out: within 10 % of the sum, not within 10 % of the supply.",
      args: ["IRC-2021", 100, 85],
      gives: "by one definition",
    },
  ],
  troubles: [
    { when: "The edition is not known.", args: ["62.2-1999", 100, 95] },
    { when: "A flow is negative.", args: ["WA-2021", 100, -95] },
  ],
  related: ["BALANCED_RATE", "DWELLING_RATE"],
};
