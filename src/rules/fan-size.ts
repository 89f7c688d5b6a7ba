import { oneValue } from "../algebra";
import { rateWithMargin } from "../formulas";

export interface FanSize {
  /** The smallest rated flow that will do; undefined where none will. */
  readonly rated: number | undefined;
  /** The largest of the list; undefined for a list without ratings. */
  readonly largest: number | undefined;
  /** The least rated flow asked for. */
  readonly least: number;
}

/** So much of a rate is rounding: 50 with 10 % more is met by a fan of 55. */
const hair = 1e-9;

/**
 * The smallest fan of a list that still meets the rate after the margin. `required` and `ratings`
 * in one unit; `margin` in per cent. The ratings may stand in any order.
 */
export function fanSize(required: number, margin: number, ratings: readonly number[]): FanSize {
  const least = oneValue(rateWithMargin, { R: required, s: margin });
  let rated: number | undefined;
  let largest: number | undefined;
  for (const rating of ratings) {
    if (largest === undefined || rating > largest) largest = rating;
    if (rating >= least * (1 - hair) && (rated === undefined || rating < rated)) rated = rating;
  }
  return { rated, largest, least };
}
