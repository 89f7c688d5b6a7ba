import { GAMMALN } from "@formulajs/formulajs";
import { betaFraction } from "../../spread";

/**
 * The regularised incomplete beta function I_x(a, b) by its continued fraction; full precision where the formula library's own carries seven digits.
 */
export function incompleteBeta(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  if (x > (a + 1) / (a + b + 2)) return 1 - incompleteBeta(1 - x, b, a);
  return (betaWeight(x, a, b) * betaFraction(x, a, b)) / a;
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
