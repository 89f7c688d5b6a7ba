import type { Source } from "../formulas";

/** Run-time factors: share of each segment that the fan runs, and what to multiply the rate by. */
export interface RunTimeRule {
  readonly segmentHours: number;
  readonly rows: readonly (readonly [share: number, factor: number])[];
  readonly source: Source;
}

/** A plain average over cycles of these hours at most. */
export interface CycleRule {
  readonly averageHours: number;
  /** Least share of the time that the fan runs, where the edition says. */
  readonly leastShare?: number;
  readonly source: Source;
}
