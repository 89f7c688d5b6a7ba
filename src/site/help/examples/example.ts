import type { Formula, Source } from "../../../formulas";
import type { Cell, ExampleArgument } from "../topic";

/** A worked example. A test runs it through the worksheet function itself. */
export interface Example {
  readonly id: string;
  /** The case in words. */
  readonly words: string;
  readonly args: readonly ExampleArgument[];
  /** The cells that come out, row by row. */
  readonly gives: readonly (readonly Cell[])[];
  /** How far a number may lie from the one given. */
  readonly tolerance: number;
  /** Unit or words that follow the result. */
  readonly unit: string;
  /** The sums behind it, one for each number that comes out. */
  readonly sums: readonly Sum[];
  /** Where a required rate stands, as the edition's own data say. */
  readonly source?: Source;
}

export interface Sum {
  readonly formula: Formula;
  readonly given: Readonly<Record<string, number>>;
}
