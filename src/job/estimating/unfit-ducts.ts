import { grouped } from "../../cells";
import { ductRules, findDuct, findRule } from "../../editions";
import { longestDuct } from "../../rules";
import type { Settings } from "../read";
import { attempt, valueIn } from "../read/maybe";
import { num, type Row, text } from "./row";

/** Runs of a duct that the table does not allow for the fans to buy. */
export interface UnfitDuct {
  readonly item: string;
  /** Rated flow of the fans. */
  readonly buy: number;
  /** The longest run as drawn, and what may be; NaN where no length of it may. */
  readonly length: number;
  readonly allowed: number;
  readonly runs: number;
  /** "flex 5": the narrowest of the kind that passes for all of the runs, else of another kind. */
  readonly instead: string | undefined;
}

/** The planned ducts that their check rejects, by duct and fan. */
export function unfitDucts(
  rows: readonly Row[],
  settings: Pick<Settings, "ducts" | "system">,
): UnfitDuct[] {
  const unfit = rows.filter(({ duct }) => ["too long", "too narrow"].includes(text(duct)));
  const groups = grouped(unfit, ({ ductItem, buy }) => `${text(ductItem)} ${num(buy)}`);
  return [...groups.values()].map((own) => {
    const [first = {}] = own;
    return {
      item: text(first.ductItem),
      buy: num(first.buy),
      length: Math.max(...own.map(({ ductLength }) => num(ductLength))),
      allowed: Math.min(...own.map(({ allowed }) => num(allowed))),
      runs: own.length,
      instead: passing(own, settings),
    };
  });
}

function passing(
  own: readonly Row[],
  { ducts, system }: Pick<Settings, "ducts" | "system">,
): string | undefined {
  const drawn = findDuct(text(own[0]?.ductKind));
  const rule = valueIn(attempt(() => findRule("duct lengths", ductRules, ducts)));
  const offered = [...(rule?.rows ?? [])].sort(
    (a, b) => Number(a.duct !== drawn) - Number(b.duct !== drawn) || a.diameter - b.diameter,
  );
  const found = offered.find(({ duct: kind, diameter }) =>
    own.every((row) => {
      const duct = { kind, diameter, ratedFlow: num(row.buy), elbows: num(row.elbows) || 0 };
      const value = valueIn(attempt(() => longestDuct(ducts, duct, system)))?.value;
      return value === "no limit" || (typeof value === "number" && value >= num(row.ductLength));
    }),
  );
  return found && `${found.duct} ${found.diameter}`;
}
