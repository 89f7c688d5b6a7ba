import { GAMMALN, T } from "@formulajs/formulajs";
import { incompleteBeta } from "./beta";

/** Student's t distribution through the incomplete beta function (Abramowitz and Stegun, 26.7.1). */
export function studentCdf(t: number, freedom: number): number {
  const tail = incompleteBeta(freedom / (freedom + t * t), freedom / 2, 0.5) / 2;
  return t > 0 ? 1 - tail : tail;
}

export function studentDensity(t: number, freedom: number): number {
  const scale =
    Number(GAMMALN((freedom + 1) / 2)) -
    Number(GAMMALN(freedom / 2)) -
    Math.log(freedom * Math.PI) / 2;
  return Math.exp(scale - ((freedom + 1) / 2) * Math.log1p((t * t) / freedom));
}

/** The t below which the probability lies, polished by Newton steps. */
export function studentInverse(probability: number, freedom: number): number {
  let t = Number(T.INV(probability, freedom));
  for (let i = 0; i < 4; i++) {
    const step = (studentCdf(t, freedom) - probability) / studentDensity(t, freedom);
    if (!Number.isFinite(step)) break;
    t -= step;
    if (Math.abs(step) <= 1e-15 * Math.abs(t)) break;
  }
  return t;
}
