const density = (x: number) => Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);

/** Where the series below grows longer than the continued fraction. */
const farTail = 3;

/**
 * Φ(x): the chance that a standard normal variable lies below x.
 *
 * Near the middle by the series ½ + φ(x)·(x + x³/3 + x⁵/(3·5) + …) (G. Marsaglia, J. Stat. Softw. 11(4),
 * 2004), in the tails by Laplace's continued fraction φ(x)/(x + 1/(x + 2/(x + …))) (Abramowitz and
 * Stegun 26.2.14): full precision in either tail.
 */
export function normalChance(x: number): number {
  if (!(Math.abs(x) < farTail)) return x > 0 ? 1 - tail(x) : x < 0 ? tail(-x) : Number.NaN;
  let term = x;
  let sum = x;
  for (let k = 3; Math.abs(term) > 1e-17; k += 2) {
    term *= (x * x) / k;
    sum += term;
  }
  return 0.5 + density(x) * sum;
}

/** 1 − Φ(x) for x of 3 or more. A hundred steps leave nothing of the fraction from there on. */
function tail(x: number): number {
  if (x > 40) return 0;
  let rest = x;
  for (let k = 100; k > 0; k--) rest = x + k / rest;
  return density(x) / rest;
}

/** The x below which the probability lies, 0 < probability < 1; otherwise ±∞ or NaN. */
export function normalQuantile(probability: number): number {
  if (!(probability > 0 && probability < 1))
    return probability === 0 ? -Infinity : probability === 1 ? Infinity : Number.NaN;
  if (probability === 0.5) return 0;
  if (probability > 0.5) return -normalQuantile(1 - probability);
  return -climb(0, (x) => (normalChance(-x) - probability) / density(x));
}

/**
 * Newton's method from a start below the root of a tail that falls and flattens: every step is
 * short of the root, so it climbs there and ends when the steps are rounding.
 */
export function climb(start: number, step: (x: number) => number): number {
  let x = start;
  for (let i = 0; i < 2000; i++) {
    const by = step(x);
    x += by;
    if (!(by > 4e-16 * x)) break;
  }
  return x;
}
