import type { Formula, Source, Unit } from "../../formulas";
import type { Budget } from "../../spread";
import type { Given } from "./given";

/** A formula with the numbers of one call. */
export interface Sum {
  readonly formula: Formula;
  readonly given: Readonly<Record<string, number>>;
}

/** How one call comes to its result. */
export interface Grounds {
  /** Formulas in the order of the sum; the last one gives the result where `gives` is left out. */
  readonly sums?: readonly Sum[];
  /** What no formula of symbols says. */
  readonly words?: readonly string[];
  /** In place of the sources of the formulas: the rule that was looked up. */
  readonly sources?: readonly Source[];
  /** What the function gives, cell by cell. */
  readonly gives?: readonly (number | string)[];
  /** Unit of the numbers in `gives`. */
  readonly unit?: Unit;
  /** The uncertainty budget that the result is. */
  readonly budget?: Budget;
  /** The result in words, where several cells come side by side. */
  readonly result?: string;
}

/** How a worksheet function works, told from the values of its arguments. */
export interface Working {
  readonly title: string;
  /** Its arguments, in the order of the call. */
  readonly takes: readonly string[];
  /** Arguments that are read whole: a column of a list, the readings of a row. */
  readonly lists?: readonly string[];
  /** Shown in symbols where an argument is missing, so that no numbers can stand in them. */
  readonly formulas?: readonly Formula[];
  /** Throws an ArgumentError where an argument will not do, and what the rules throw. */
  readonly explain: (given: Given) => Grounds;
}
