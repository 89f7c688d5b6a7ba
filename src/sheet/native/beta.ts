import { GAMMALN } from "@formulajs/formulajs";

const tiny = 1e-300;

/**
 * The regularised incomplete beta function I_x(a, b) by its continued fraction (NIST DLMF 8.17.22), with
 * Lentz's method; full precision where the formula library's own carries seven digits.
 */
export function incompleteBeta(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  if (x > (a + 1) / (a + b + 2)) return 1 - incompleteBeta(1 - x, b, a);
  let c = 1;
  let d = 1 / guarded(1 - ((a + b) * x) / (a + 1));
  let fraction = d;
  for (let m = 1; m < 10_000; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / guarded(1 + even * d);
    c = guarded(1 + even / c);
    fraction *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / guarded(1 + odd * d);
    c = guarded(1 + odd / c);
    fraction *= d * c;
    if (Math.abs(d * c - 1) < 1e-16) break;
  }
  return (betaWeight(x, a, b) * fraction) / a;
}

function guarded(value: number): number {
  return Math.abs(value) < tiny ? tiny : value;
}

/** x^a (1−x)^b / B(a, b). */
export function betaWeight(x: number, a: number, b: number): number {
  const scale = Number(GAMMALN(a + b)) - Number(GAMMALN(a)) - Number(GAMMALN(b));
  return Math.exp(scale + a * Math.log(x) + b * Math.log1p(-x));
}

/** The x below which the share lies, by halving and then Newton's steps. */
export function inverseBeta(share: number, a: number, b: number): number {
  if (share <= 0 || share >= 1) return share <= 0 ? 0 : 1;
  let low = 0;
  let high = 1;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (incompleteBeta(middle, a, b) < share) low = middle;
    else high = middle;
  }
  let x = (low + high) / 2;
  for (let i = 0; i < 3; i++) {
    const step = ((incompleteBeta(x, a, b) - share) * x * (1 - x)) / betaWeight(x, a, b);
    if (Number.isFinite(step) && x - step > 0 && x - step < 1) x -= step;
  }
  return x;
}
