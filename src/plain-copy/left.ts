/** A cell whose formula went and whose stored value stayed, or a remark on one that was replaced. */
export interface LeftCell {
  readonly sheet: string;
  /** "B2"; the name itself for a defined name. */
  readonly cell: string;
  readonly why: string;
}
