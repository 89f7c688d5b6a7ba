import { oneValue } from "../algebra";
import { agreementLimit, percentError } from "../formulas";
import { repeats } from "./evaluate";
import { coverage } from "./student";

/** How many standard deviations each way the limits of agreement lie: 95 % of normal differences. */
export const agreementFactor = 1.96;

/** How far two ways of measuring the same things agree (Bland and Altman, Lancet 1986). */
export interface Agreement {
  readonly n: number;
  /** Mean of the differences. */
  readonly bias: number;
  /** Standard deviation of the differences; NaN of fewer than two, as are the limits. */
  readonly sd: number;
  /** Limits of agreement, bias ∓ factor · SD. */
  readonly low: number;
  readonly high: number;
  /** Between these the next difference lies with 95 %: bias ∓ `nextFactor` · SD. */
  readonly nextLow: number;
  readonly nextHigh: number;
  /** The difference farthest from zero, without its sign. */
  readonly largest: number;
  /** Standard error of the bias, SD/√n. */
  readonly biasError: number;
  /** Standard error of either limit, about √(3·SD²/n). */
  readonly limitError: number;
}

/**
 * How many standard deviations each way the next of n normal differences lies with 95 %: Student's t
 * of n − 1 times √(1 + 1/n). NaN of fewer than two.
 */
export function nextFactor(n: number): number {
  return n < 2 ? Number.NaN : coverage(n - 1) * Math.sqrt(1 + 1 / n);
}

/**
 * The agreement that differences between pairs of readings show, in the unit of the differences.
 * `factor` is 1.96; the paper itself rounds it to 2.
 */
export function agreement(
  differences: ArrayLike<number>,
  factor: number = agreementFactor,
): Agreement {
  const { n, mean: bias, s: sd, u: biasError } = repeats(differences);
  let largest = n > 0 ? 0 : Number.NaN;
  for (let i = 0; i < n; i++) largest = Math.max(largest, Math.abs(differences[i] as number));
  const limit = (z: number) => oneValue(agreementLimit, { B: bias, z, s: sd });
  return {
    n,
    bias,
    sd,
    low: limit(-factor),
    high: limit(factor),
    nextLow: limit(-nextFactor(n)),
    nextHigh: limit(nextFactor(n)),
    largest,
    biasError,
    limitError: Math.sqrt(3) * biasError,
  };
}

/** Each measured value less its reference, in percent of the reference. Lengths must be alike. */
export function percentDifferences(
  measured: ArrayLike<number>,
  reference: ArrayLike<number>,
): Float64Array {
  if (measured.length !== reference.length)
    throw new RangeError(
      `${measured.length} measured and ${reference.length} reference values: give pairs`,
    );
  return Float64Array.from(measured, (Q, i) =>
    oneValue(percentError, { Q, R: reference[i] as number }),
  );
}
