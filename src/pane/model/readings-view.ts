import { cellName, fixed } from "../../cells";
import {
  factsOf,
  flowsOf,
  type Job,
  type RangeStatus,
  type Replaced,
  reachOf,
  type Verdict,
} from "../../job";

/** A verdict, that there is no rate to judge by, or how another row stands for the fan. */
export type FanVerdict = Verdict | "rate unknown" | Replaced;

/** One fan as the pictures show it. Flows in the unit in which they are told; NaN where not known. */
export interface FanReading {
  /** Sheet row, from 0. */
  readonly row: number;
  readonly sheet: string;
  readonly cell: string;
  readonly label: string;
  readonly pressure: number;
  readonly flow: number;
  readonly required: number;
  readonly status: RangeStatus | undefined;
  readonly verdict: FanVerdict;
  /** What a reading outside the window says all the same: "above, already meets …"; else "". */
  readonly outside: string;
  /** Flows that the lowest and the highest reading alone would give. */
  readonly spread: readonly [low: number, high: number] | undefined;
}

export const readingFilters = [
  "all",
  "short",
  "too close to call",
  "out of range",
  "not measured",
  "rate unknown",
  "none required",
  "read again",
  "part of a mean",
  "meets",
] as const;
export type ReadingFilter = (typeof readingFilters)[number];

export function fanReadings(job: Job): FanReading[] {
  const facts = factsOf(job).fans;
  if (!facts) return [];
  const { fans } = facts;
  const { length, flow, table } = fans;
  const { factor } = flowsOf(job);
  return Array.from({ length }, (_, i) => {
    const readings = fans.readings(i).filter((value) => value > 0);
    const span =
      readings.length > 1
        ? reachOf(fans.area[i] as number, fans.constant[i] as number, {
            low: Math.min(...readings),
            high: Math.max(...readings),
          })
        : undefined;
    const place = table.placeOrHome(fans.typedPressure(i), i);
    return {
      row: place.row,
      sheet: place.grid.name,
      cell: cellName(place.row, place.col),
      label: fans.label(i) || table.where(i),
      pressure: fans.pressure[i] as number,
      flow: factor * (flow[i] as number),
      required: factor * facts.required(i),
      status: fans.status[i],
      outside: outsideWords(fans.status[i], facts.alreadyMeets(i)),
      verdict: facts.replacedAs(i) ?? facts.verdict(i) ?? "rate unknown",
      spread: span && span.lowest > 0 ? [factor * span.lowest, factor * span.highest] : undefined,
    };
  });
}

function outsideWords(status: RangeStatus | undefined, alreadyMeets: boolean): string {
  if (!status || status === "in range") return "";
  return alreadyMeets ? `${status}; already meets, and the box only lowers it` : status;
}

/** The readings of a verdict; of all, those that a mean stands for are left to the mean. */
export function filterReadings(
  readings: readonly FanReading[],
  filter: ReadingFilter,
): readonly FanReading[] {
  return readings.filter(({ verdict }) =>
    filter === "all" ? verdict !== "part of a mean" : verdict === filter,
  );
}

/** How many fans each filter shows. */
export function countReadings(readings: readonly FanReading[]): Record<ReadingFilter, number> {
  const entries = readingFilters.map((filter) => [filter, filterReadings(readings, filter).length]);
  return Object.fromEntries(entries) as Record<ReadingFilter, number>;
}

/** The spread of the readings in words: "±8 %"; "" where there was one reading or none. */
export function spreadWords({ spread, flow }: FanReading): string {
  if (!spread || !(flow > 0)) return "";
  const percent = (50 * (spread[1] - spread[0])) / flow;
  return `±${fixed(percent, percent < 1 ? 1 : 0)} %`;
}
