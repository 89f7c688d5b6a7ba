import { oneValue } from "../algebra";
import { InputError } from "../cells";
import { type CreditRule, type Edition, editions, type System } from "../editions";
import { creditCapped, fanRateAfterCredit, fanRateAfterExcess, unbalancedShare } from "../formulas";
import { flowUnit, type RequiredRate, requireSystem } from "./room-rate";
import { ruleOf, statedIn, worked } from "./ruling";

export const works = ["new", "existing"] as const;
export type Work = (typeof works)[number];

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
  const rule = ruleOf(edition, "credit", "infiltration credit");
  const { total, exposedShare } = of;
  if (!(total > 0)) throw new InputError(`total ${total}: give a number above 0`);
  if (!(of.infiltration >= 0))
    throw new InputError(`infiltration ${of.infiltration}: give 0 or more`);
  if (!(exposedShare >= 0 && exposedShare <= 1))
    throw new InputError(
      `exposedShare ${exposedShare}: give the share that faces outside, from 0 to 1`,
    );
  if (exposedShare < 1 && !rule.exposure) throw noExposure(edition);
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
  const lines = [
    ...(cap ? [worked(creditCapped, capped, system)] : []),
    ...(unbalanced ? [worked(unbalancedShare, { I, T }, system)] : []),
    worked(fanRateAfterCredit, given, system),
  ];
  return {
    rate: oneValue(fanRateAfterCredit, given),
    source: cap && I < of.infiltration && !unbalanced ? cap.source : rule.source,
    working: lines.join("; "),
  };
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
    return {
      rate: T,
      source,
      working: `${T} ${flowUnit(system)}: new work has no credit beyond the default inside the rate`,
    };
  if (A === undefined || !(A > 0))
    throw new InputError(
      `${edition.id} credits only infiltration above a default by floor area: give floorArea`,
    );
  const d = statedIn(rule.byDefault, system, edition.id);
  const given = { T, s: rule.share, I: of.infiltration, d, A };
  return {
    rate: oneValue(fanRateAfterExcess, given),
    source,
    working: worked(fanRateAfterExcess, given, system),
  };
}

function noExposure(edition: Edition): InputError {
  const known = editions.filter(({ credit }) => credit?.exposure).map(({ id }) => id);
  return new InputError(
    `${edition.id} has no credit by exposedShare: leave it out, or use one of ${known.join(", ")}`,
  );
}
