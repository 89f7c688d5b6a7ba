import { cellName } from "../../cells";
import {
  fanBudget,
  type Job,
  type RangeStatus,
  reachOf,
  type Verdict,
  verdictColumn,
} from "../../job";
import { guardOf, judgedFlow } from "./judged";

/** A verdict, or that there is no rate to judge by. */
export type FanVerdict = Verdict | "rate unknown";

/** One fan as the pictures show it. Flows in the job's unit; NaN where not known. */
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
  /** Flows that the lowest and the highest reading alone would give. */
  readonly spread: readonly [low: number, high: number] | undefined;
}

export const readingFilters = [
  "all",
  "short",
  "too close to call",
  "retest",
  "not measured",
  "rate unknown",
  "meets",
] as const;
export type ReadingFilter = (typeof readingFilters)[number];

export function fanReadings(job: Job): FanReading[] {
  const { fans } = job;
  if (!fans) return [];
  const { length, flow, table } = fans;
  const required = Float64Array.from({ length }, (_, i) => fans.requiredNumber(i));
  const judged = Float64Array.from({ length }, (_, i) => judgedFlow(job, i));
  // Only guarded judging asks for the spreads, which take their time.
  const spread =
    job.settings.judging === "guarded"
      ? Float64Array.from({ length }, (_, i) => fanBudget(fans, i)?.u ?? Number.NaN)
      : Number.NaN;
  const verdicts = verdictColumn(judged, required, length, statuses(job), guardOf(job, spread));
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
      flow: flow[i] as number,
      required: required[i] as number,
      status: fans.status[i],
      verdict: verdictOf(verdicts[i], fans.pressure[i] as number),
      spread: span && span.lowest > 0 ? [span.lowest, span.highest] : undefined,
    };
  });
}

/** The window is that of the box: it says nothing of what another instrument has read. */
function statuses({ fans }: Job): readonly (RangeStatus | undefined)[] {
  return fans?.status.map((each, i) => (fans.isByInstrument(i) ? undefined : each)) ?? [];
}

function verdictOf(verdict: Verdict | undefined, pressure: number): FanVerdict {
  // A reversed pressure gives no flow, yet it was measured: it wants another reading.
  return pressure < 0 ? "retest" : (verdict ?? "rate unknown");
}

export function filterReadings(
  readings: readonly FanReading[],
  filter: ReadingFilter,
): readonly FanReading[] {
  return filter === "all" ? readings : readings.filter((reading) => reading.verdict === filter);
}

/** How many fans each filter shows. */
export function countReadings(readings: readonly FanReading[]): Record<ReadingFilter, number> {
  const entries = readingFilters.map((filter) => [filter, filterReadings(readings, filter).length]);
  return Object.fromEntries(entries) as Record<ReadingFilter, number>;
}

/** The spread of the readings in words: "±8 %"; "" where there was one reading or none. */
export function spreadWords({ spread, flow }: FanReading): string {
  if (!spread || !(flow > 0)) return "";
  return `±${Math.round((50 * (spread[1] - spread[0])) / flow)} %`;
}
