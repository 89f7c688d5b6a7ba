import { oneValue } from "../algebra";
import { InputError, significant } from "../cells";
import { designMatchRules, findRule, retestBands, type System } from "../editions";
import { matchTolerance } from "../formulas";
import { type Ruling, statedIn, worked } from "./ruling";

export const matches = ["matches", "low", "high"] as const;
export type Match = (typeof matches)[number];

export interface DesignMatch extends Ruling<Match> {
  readonly lowest: number;
  readonly highest: number;
}

/** A sum and a difference of decimals may miss their limit by a last digit. */
const hair = 1e-9;

/** Whether a measured flow lies within a programme's tolerance of its design, either way. */
export function designMatch(
  programme: string,
  design: number,
  measured: number,
  system: System,
): DesignMatch {
  const rule = findRule("tolerance to a design", designMatchRules, programme, "programme");
  if (!(design > 0)) throw new InputError(`design ${design}: give a number above 0`);
  if (!(measured >= 0)) throw new InputError(`measured ${measured}: give 0 or more`);
  const given = { D: design, t: statedIn(rule.within, system, rule.code), s: rule.share };
  const tolerance = oneValue(matchTolerance, given);
  const [lowest, highest] = [design - tolerance, design + tolerance];
  const value = measured < lowest - hair ? "low" : measured > highest + hair ? "high" : "matches";
  return {
    value,
    lowest,
    highest,
    source: rule.source,
    working: worked(matchTolerance, given, system),
  };
}

/** The grade of a second tester's reading against the first one, by the share they lie apart. */
export function retestBand(first: number, second: number): Ruling<string> {
  if (!(first > 0)) throw new InputError(`first reading ${first}: give a number above 0`);
  const apart = Math.abs(second - first) / first;
  const row = retestBands.rows.find(({ upTo, edge }) =>
    edge === "inside" ? apart <= upTo : apart < upTo,
  );
  return {
    value: row?.band ?? "",
    source: retestBands.source,
    working: `${significant(100 * apart, 4)} % apart`,
  };
}
