import type { Formula, Source } from "../../formulas";

/** A cell of an example: what a person would type. */
export type Cell = string | number;

/** An argument of an example: a cell, a column of cells, or nothing where it is left out. */
export type ExampleArgument = Cell | readonly Cell[] | null;

/** What the help says of a function beyond its own description. */
export interface Topic {
  /** Id of the worksheet function. */
  readonly id: string;
  /** What it computes and when to use it, in paragraphs. */
  readonly computes: readonly string[];
  /** What comes out, with its unit. */
  readonly result: string;
  /** The formulas behind it; none where it looks something up. */
  readonly formulas: readonly Formula[];
  /** Where a look-up has its rule from, if no formula says so. */
  readonly source?: Source;
  /** Calls that go wrong: the page shows what the function itself answers. */
  readonly troubles: readonly Trouble[];
  /** Ids of functions to read next. */
  readonly related: readonly string[];
}

export interface Trouble {
  readonly when: string;
  readonly args: readonly ExampleArgument[];
}
