import { type FeatureKey, type JobSize, layouts, type SheetKind } from "../job";

/** A row's typed values and formulas by field key; what is left out gets the row's own formula. */
export type Row = Record<string, number | string | null | { formula: string }>;

export interface JobRows extends Partial<Readonly<Record<SheetKind, Row[]>>> {
  readonly settings: Readonly<Record<string, number | string>>;
  /** What the job has beyond readings and verdicts. */
  readonly features?: readonly FeatureKey[];
  readonly dwellings: Row[];
  readonly boxes: Row[];
  readonly fans: Row[];
}

/** The rows that the lookups of a job cover. */
export function sizeOf(rows: JobRows): JobSize {
  const lengths = layouts.map(({ kind }) => [kind, rows[kind]?.length ?? 0] as const);
  return {
    ...Object.fromEntries(lengths),
    fans: rows.fans.length,
    boxes: rows.boxes.length,
  };
}
