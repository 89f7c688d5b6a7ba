import { oneValue } from "../algebra";
import { fullWidthSpread, halfWidthSpread, meanSpread } from "../formulas";

/** A limit ±a, every value within equally likely: a/√3 (GUM 4.3.7). */
export const halfWidth = (a: number): number => oneValue(halfWidthSpread, { a });

/** A resolution, the full width of what rounds to one reading: width/√12 (GUM F.2.2.1). */
export const fullWidth = (w: number): number => oneValue(fullWidthSpread, { w });

/** What repeated readings say of their mean. */
interface Repeats {
  readonly n: number;
  readonly mean: number;
  /** Experimental standard deviation of one reading; NaN of fewer than two. */
  readonly s: number;
  /** Standard uncertainty of the mean, s/√n; NaN of fewer than two. */
  readonly u: number;
  /** n − 1. */
  readonly dof: number;
}

/** The type A evaluation of readings of one quantity in one unit (GUM 4.2.1 to 4.2.3). */
export function repeats(readings: ArrayLike<number>): Repeats {
  const n = readings.length;
  const mean = sum(readings, (x) => x) / n;
  const first = readings[0];
  // The mean of equal readings may miss them by a last digit, which is no scatter.
  const alike = Array.prototype.every.call(readings, (x: number) => x === first);
  const s = alike ? 0 : Math.sqrt(sum(readings, (x) => (x - mean) ** 2) / (n - 1));
  const known = n > 1 ? s : Number.NaN;
  return { n, mean, s: known, u: oneValue(meanSpread, { s: known, n }), dof: n - 1 };
}

export function sum(values: ArrayLike<number>, of: (value: number, i: number) => number): number {
  let total = 0;
  for (let i = 0; i < values.length; i++) total += of(values[i] as number, i);
  return total;
}
