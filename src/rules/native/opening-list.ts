import type { Table } from "./table";

/** A list of openings, read by formulas: it follows what is typed into the list. */
export interface OpeningList {
  readonly table: Table;
  /** Whether it tells boxes apart. */
  readonly hasBoxes: boolean;
  /** Its boxes, a row each, with the labels and areas of their openings. */
  readonly boxes: () => Table;
  /** Every set of openings: which it holds, how many, and its area in each box. */
  readonly sets: () => Table;
  /** The openings that the sets have room for in each box. */
  readonly room: number;
  /** A box of the list has too many openings for all its sets to be tried. */
  readonly isTooLarge: boolean;
}
