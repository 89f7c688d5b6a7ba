import type { Formula, Source } from "../../formulas";

/** A cell of an example: what a person would type. */
export type ExampleCell = string | number;

/** An argument of an example: a cell, a column of cells, or nothing where it is left out. */
export type ExampleArgument = ExampleCell | readonly ExampleCell[] | null;

/** What the help says of a function beyond its own description. */
export interface Help {
  /** What it computes and when to use it, in paragraphs. */
  readonly computes: readonly string[];
  /** What comes out, with its unit. */
  readonly result: string;
  /** Formulas to show; those of the rule where left out. */
  readonly formulas?: readonly Formula[];
  /** Where a look-up has its rule from, if no formula says so. */
  readonly source?: Source;
  readonly examples: readonly Example[];
  /** Calls that go wrong: the page shows what the function itself answers. */
  readonly troubles: readonly {
    readonly when: string;
    readonly args: readonly ExampleArgument[];
  }[];
  /** Ids of functions to read next. */
  readonly related: readonly string[];
}

/** A worked example. A test runs it; the page shows the sums behind it. */
export interface Example {
  /** The case in words. */
  readonly words: string;
  readonly args: readonly ExampleArgument[];
  /** The cells that come out, numbers to six digits, in a row or in rows. */
  readonly gives: ExampleCell | readonly ExampleCell[] | readonly (readonly ExampleCell[])[];
  /** Unit of the numbers where the working tells none. */
  readonly unit?: string;
}
