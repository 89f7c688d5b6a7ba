import type { Source } from "../formulas";

/** Run-time factors: share of each segment that the fan runs, and what to multiply the rate by. */
export interface RunTimeRule {
  readonly segmentHours: number;
  readonly rows: readonly (readonly [share: number, factor: number])[];
  readonly source: Source;
}

/** Effectiveness of a fan that runs this share of its cycle. */
export interface EffectivenessRow {
  readonly upTo: number;
  /** Whether `upTo` itself belongs to the row. */
  readonly edge: "inside" | "outside";
  readonly effectiveness: number;
}

/** A plain average over short cycles; an effectiveness by share of time over longer ones. */
export interface CycleRule {
  readonly averageHours: number;
  readonly source: Source;
  readonly longer: {
    readonly mostHours: number;
    readonly rows: readonly EffectivenessRow[];
    readonly source: Source;
  };
}
