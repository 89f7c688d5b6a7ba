/** A formula that has no equivalent; `message` says what in it stands against one. */
export class Left extends Error {}

/** A cell whose formula went and whose stored value stayed, or a remark on one that was replaced. */
export interface LeftCell {
  readonly sheet: string;
  /** "B2"; the name itself for a defined name. */
  readonly cell: string;
  readonly why: string;
}
