import { grouped } from "../../cells";
import type { Edition, NumberKind } from "../../editions";
import { dwellingRate, type RequiredRate, rateIfBalanced } from "../../rules";
import { factsOf } from "../facts";
import { attempt, type Job, type Maybe } from "../read";

/** One kind of thing that both editions may have a rate for, and what another edition changes. */
export interface RateUnder {
  /** "bathroom on demand"; of a single fan or dwelling with its name: "whole dwelling, House 4". */
  readonly what: string;
  /** Rates in the job's units; why there is none, in words. */
  readonly before: number | string;
  readonly after: number | string;
  /** "up", "down", "same", or "unlike" where only one of the two has a rate. */
  readonly change: "up" | "down" | "same" | "unlike";
  /** Fans or dwellings of this kind, and those whose simple verdict turns. */
  readonly count: number;
  readonly turnsShort: readonly string[];
  readonly turnsMet: readonly string[];
  /** What the other edition's number is a number of, and its clause; "" where it has none. */
  readonly is: NumberKind | "";
  readonly source: string;
}

interface Case {
  readonly what: string;
  readonly name: string;
  readonly before: Maybe<RequiredRate>;
  readonly after: Maybe<RequiredRate>;
  /** NaN where nothing was measured. */
  readonly flow: number;
  readonly is: NumberKind | "";
}

/**
 * What changes for a job's fans and dwellings under another edition: rates up and down, and verdicts
 * that turn by simple acceptance. What an edition would ask and the sheet does not tell counts as it
 * asks for most.
 */
export function underEdition(job: Job, other: Edition): RateUnder[] {
  const cases = [...fanCases(job, other), ...dwellingCases(job, other)];
  const groups = grouped(cases, ({ what, before, after }) =>
    [what, rateOf(before), rateOf(after)].join("|"),
  );
  return [...groups.values()].map(summed);
}

function fanCases({ fans }: Job, other: Edition): Case[] {
  return Array.from({ length: fans?.length ?? 0 }, (_, i) => i).flatMap((i): Case[] => {
    if (!fans) return [];
    const [room, duty] = [fans.room(i), fans.duty(i)];
    if (!("value" in room && "value" in duty)) return [];
    const after = attempt(() => fans.rateUnder(other, i));
    return [
      {
        what: `${room.value} ${duty.value}`,
        name: fans.label(i),
        before: fans.required(i),
        after,
        flow: fans.flow[i] as number,
        is: fans.ruleUnder(other, i)?.is ?? "",
      },
    ];
  });
}

function dwellingCases(job: Job, other: Edition): Case[] {
  const { dwellings } = job.tables;
  const { edition, system } = job.settings;
  const all = factsOf(job).dwellings;
  return Array.from({ length: dwellings?.length ?? 0 }, (_, i) => i).flatMap((i): Case[] => {
    if (!dwellings || !edition) return [];
    const [floor, bedrooms] = [dwellings.number("floor", i), dwellings.number("bedrooms", i)];
    if (!(floor > 0 && bedrooms >= 0)) return [];
    const { ofSystem, required } = all.at(i);
    // By the kind of its system, where the edition goes by that; what is not said asks for most.
    const underOther = () => {
      const kind = all.systemKind(i) ?? false;
      const rate = dwellingRate(other, floor, bedrooms, system);
      const isChanged = kind === true || other.balanced?.increase;
      return other.balanced && isChanged ? rateIfBalanced(other.id, rate.rate, kind) : rate;
    };
    return [
      {
        what: "whole dwelling",
        name: dwellings.text("dwelling", i),
        before: ofSystem && "value" in ofSystem ? ofSystem : required,
        after: attempt(underOther),
        flow: dwellings.has("provided") ? dwellings.number("provided", i) : Number.NaN,
        is: "",
      },
    ];
  });
}

function summed(cases: readonly Case[]): RateUnder {
  const { what, name, before, after, is } = cases[0] as Case;
  const [old, now] = [rateOf(before), rateOf(after)];
  const names = (turned: (flow: number) => boolean) =>
    typeof old === "number" && typeof now === "number"
      ? cases.filter(({ flow }) => turned(flow)).map(({ name }) => name)
      : [];
  const compared = typeof old === "number" && typeof now === "number";
  return {
    what: cases.length === 1 ? `${what}, ${name}` : what,
    before: old,
    after: now,
    change: !compared ? "unlike" : now > old ? "up" : now < old ? "down" : "same",
    count: cases.length,
    turnsShort: names((flow) => flow >= Number(old) && flow < Number(now)),
    turnsMet: names((flow) => flow < Number(old) && flow >= Number(now)),
    is,
    source: "value" in after ? `${after.value.source.work}, ${after.value.source.clause}` : "",
  };
}

/** The rate, or why there is none. */
function rateOf(rate: Maybe<RequiredRate>): number | string {
  if ("value" in rate) return Math.round(rate.value.rate * 100) / 100;
  return rate.problem instanceof Error ? rate.problem.message : "no rate";
}
