import { oneValue, plain } from "../../algebra";
import { InputError } from "../../cells";
import { type CreditRule, type Edition, editions, type System } from "../../editions";
import {
  creditCapped,
  fanRateAfterCredit,
  fanRateAfterExcess,
  unbalancedShare,
} from "../../formulas";
import { edition, flowToCome, limit, units, yesNo } from "../arguments";
import { ifGiven, namedIfGiven, optional } from "../contract/argument";
import type { Help } from "../contract/help";
import { aboveZero, must, share, zeroOrMore } from "../contract/need";
import { rule as ruleOf } from "../contract/rule";
import {
  flowUnits,
  ruleOf as part,
  RequiredRate,
  requireSystem,
  statedIn,
  sum,
} from "../contract/ruling";
import type { NativeForm } from "../native/native";
import { creditRules } from "../native/tables/credits";
import { wrong } from "../native/text";
import { type Work, works } from "../outcomes";

export interface Credited {
  /** Required total, cfm or L/s. */
  readonly total: number;
  /** Infiltration before any cap, in the same unit. */
  readonly infiltration: number;
  /** Share of the envelope that faces outside: 1 for a detached dwelling. */
  readonly exposedShare: number;
  readonly balanced: boolean;
  readonly work: Work;
  /** ft² or m²; needed where only infiltration above a default counts. */
  readonly floorArea?: number | undefined;
}

/** What fans must still move after an edition's infiltration credit; never below 0. */
export function fanRate(edition: Edition, of: Credited, system: System): RequiredRate {
  requireSystem(edition, system);
  const rule = part(edition, "credit", "infiltration credit");
  must("total", of.total, aboveZero);
  must("infiltration", of.infiltration, zeroOrMore);
  must("exposedShare", of.exposedShare, share);
  if (of.exposedShare < 1 && !rule.exposure) throw noExposure(edition);
  return rule.excess ? aboveDefault(edition, rule.excess, of, system) : credited(rule, of, system);
}

function credited(rule: CreditRule, of: Credited, system: System): RequiredRate {
  const { total: T, work } = of;
  const cap = work === "new" ? rule.newWork : undefined;
  const capped = { I: of.infiltration, T, c: cap?.mostOfTotal ?? 1 };
  const I = cap ? oneValue(creditCapped, capped) : of.infiltration;
  const unbalanced = rule.unbalanced && !of.balanced;
  const p = unbalanced ? oneValue(unbalancedShare, { I, T }) : 1;
  const given = { T, p, I, X: of.exposedShare };
  const source = cap && I < of.infiltration && !unbalanced ? cap.source : rule.source;
  const rate = oneValue(fanRateAfterCredit, given);
  const noFan = asksNoFan(rule, rate, work, system);
  return new RequiredRate(rate, source, system, [
    ...(cap ? [sum(creditCapped, capped)] : []),
    ...(unbalanced ? [sum(unbalancedShare, { I, T })] : []),
    sum(fanRateAfterCredit, given),
    ...(noFan
      ? [`so little may need no fan at all (${noFan.source.clause}, ${noFan.source.mark})`]
      : []),
  ]);
}

/** The rule by which so little as is left after the credit asks for no fan; undefined where it asks for one. */
export function asksNoFan(
  { noFan }: CreditRule,
  rate: number,
  work: Work,
  system: System,
): CreditRule["noFan"] {
  const limit = noFan?.[work][system];
  if (limit === undefined) return undefined;
  return (work === "new" ? rate < limit : rate <= limit) ? noFan : undefined;
}

function aboveDefault(
  edition: Edition,
  rule: NonNullable<CreditRule["excess"]>,
  of: Credited,
  system: System,
): RequiredRate {
  const { total: T, floorArea: A } = of;
  const { source } = rule;
  if (of.work === "new")
    return new RequiredRate(T, source, system, [
      `${T} ${flowUnits[system]}: new work has no credit beyond the default inside the rate`,
    ]);
  if (A === undefined || !(A > 0))
    throw new InputError(
      `${edition.id} credits only infiltration above a default by floor area: give floorArea`,
    );
  const d = statedIn(rule.byDefault, system, edition.id);
  const given = { T, s: rule.share, I: of.infiltration, d, A };
  return new RequiredRate(oneValue(fanRateAfterExcess, given), source, system, [
    sum(fanRateAfterExcess, given),
  ]);
}

function noExposure(edition: Edition): InputError {
  const known = editions.filter(({ credit }) => credit?.exposure).map(({ id }) => id);
  return new InputError(
    `${edition.id} has no credit by exposedShare: leave it out, or use one of ${known.join(", ")}`,
  );
}

function readWork(text: string): Work {
  const found = works.find((work) => work === text.toLowerCase());
  if (!found) throw new InputError(`unknown work "${text}": use one of ${works.join(", ")}`);
  return found;
}

export const rule = ruleOf({
  id: "FAN_RATE",
  title: "Rate for the fans after the infiltration credit",
  arguments: {
    edition,
    total: flowToCome,
    infiltration: limit,
    exposedShare: optional(ifGiven(share)),
    balanced: yesNo,
    work: optional(namedIfGiven(readWork)),
    units,
    floorArea: optional(ifGiven(aboveZero)),
  },
  work: ({ edition, units, exposedShare = 1, balanced = false, work = "new", ...of }) =>
    fanRate(edition, { ...of, exposedShare, balanced, work }, units).answer(flowUnits),
});

export const native: NativeForm = (native) => {
  const [T, all] = [native.far("total"), native.far("infiltration")];
  const rule = native.rowWhere(creditRules, {
    "Edition no.": native.number("edition"),
    System: native.system,
  });
  const X = native.or("exposedShare", "1", "far");
  const work = native.text("work", "far");
  const isNew = native.call.step(
    "work: 1 new, 0 existing",
    `IF(OR(${work}="",${work}="new"),1,IF(${work}="existing",0,${wrong("work: say new or existing")}))`,
  );
  const balanced = native.yesNo("balanced");
  const most = rule.of("New work, most of the total");
  const capped = `AND(${isNew}=1,${most}>0)`;
  const I = native.call.step(
    "infiltration that may count",
    `IF(${capped},${plain(creditCapped, { I: all, T, c: most })},${all})`,
  );
  const p = native.call.step(
    "share of it that counts",
    `IF(AND(${rule.of("By balance")}=1,${balanced}<1),${plain(unbalancedShare, { I, T })},1)`,
  );
  const credited = plain(fanRateAfterCredit, { T, p, I, X });
  const A = native.far("floorArea");
  const excess = plain(fanRateAfterExcess, {
    T,
    s: rule.of("Share of the excess"),
    I: all,
    d: rule.of("Default by area"),
    A,
  });
  const existing = `IF(${native.given("floorArea", "far")},IF(${rule.of("Default by area")}>0,${excess},${wrong("not stated in these units")}),${wrong("give floorArea")})`;
  const byRule = `IF(${rule.of("Share of the excess")}>0,IF(${isNew}=1,${T},${existing}),${credited})`;
  const unexposed = `AND(${X}<1,${rule.of("By exposure")}=0)`;
  const rate = `IF(${unexposed},${wrong("no credit by exposedShare in this edition")},${byRule})`;
  // Both answers are read even where they do not matter.
  const read = `IF(AND(${isNew}<9,${balanced}<9),${rate})`;
  return native.call.step("rate for the fans", rule.orNone(read));
};

export const help: Help = {
  computes: [
    "The total less what leaks in. In new work two thirds of the total count at most (from 2013 on, from memory).",
    "62.2-2019 and 2022 let less count beside fans that are not balanced, by infiltration ÷ total; the text of 2016 does not. The same house then needs 39 instead of 23 cfm: the edition matters.",
    "From 2016 on, attached dwellings count the share of their envelope that faces outside.",
    "62.2-2010 already holds a default infiltration in its rate. There only existing dwellings have a credit: half of what was measured above the default, for which the floor area is needed. Verify against your own copy of the edition that applies.",
  ],
  result: "Rate that fans must move, in the unit of the total; 0 where nothing is left.",
  formulas: [creditCapped, unbalancedShare, fanRateAfterCredit, fanRateAfterExcess],
  examples: [
    {
      words:
        "An existing, detached house with 84 cfm in total, 61.146 cfm leaking in, and exhaust fans only.",
      args: ["62.2-2019", 84, 61.146, 1, "no", "existing"],
      gives: 39.4901,
    },
  ],
  troubles: [
    { when: "The edition has no such credit.", args: ["IRC-2021", 84, 61] },
    { when: "The edition has no credit by exposed share.", args: ["62.2-2013", 84, 61, 0.5] },
    {
      when: "62.2-2010 needs the floor area of an existing dwelling.",
      args: ["62.2-2010", 48, 61, null, null, "existing"],
    },
    { when: "The work is neither new nor existing.", args: ["62.2-2016", 84, 61, 1, "no", "old"] },
  ],
  related: ["INFILTRATION", "DWELLING_RATE", "ON_RATE"],
};
