import type { Unit } from "../formulas";

/** One reason why an input may be off: a line of the budget. */
export interface Spread {
  /** What it is, unique among the inputs where a correlation names it: "manometer limit". */
  readonly label: string;
  /** Standard uncertainty in the unit of the input, 0 or more. */
  readonly u: number;
  /** Degrees of freedom, 1 or more; infinite where left out. */
  readonly dof?: number;
}

/** An input of a formula: its value, and every reason why it may be off. None: taken as exact. */
export interface Input {
  readonly value: number;
  readonly spreads?: readonly Spread[];
}

/** The correlation coefficient of two spreads, −1 to 1, by their labels (GUM 5.2.2). */
export interface Correlation {
  readonly between: readonly [string, string];
  readonly r: number;
}

export interface Line {
  /** The symbol as in the formula text, and as people write it. */
  readonly symbol: string;
  readonly shown: string;
  readonly label: string;
  /** The input's value and its unit; `u` is in the same unit. */
  readonly value: number;
  readonly unit: Unit;
  readonly u: number;
  readonly dof: number;
  /** Sensitivity coefficient: the slope of the formula by this symbol. */
  readonly slope: number;
  /** |slope| · u, in the unit of the result. */
  readonly contribution: number;
  /**
   * Part of the combined variance, 0 to 1, all adding up to 1. A correlated line carries half of
   * each covariance it has, and its share may then be negative.
   */
  readonly share: number;
}

/** The uncertainty budget of one result. */
export interface Budget {
  /** Id of the formula, and its result's name and unit. */
  readonly formula: string;
  readonly shown: string;
  readonly unit: Unit;
  readonly value: number;
  readonly lines: readonly Line[];
  /** Combined standard uncertainty. */
  readonly u: number;
  /** Effective degrees of freedom, not truncated; infinite where every line's are. */
  readonly dof: number;
  /** The chance that `expanded` is meant to cover: 0.95 unless asked otherwise. */
  readonly chance: number;
  /** Coverage factor: Student's t, for the degrees of freedom truncated downwards (GUM G.4.1). */
  readonly k: number;
  /** k · u. */
  readonly expanded: number;
}
