import { GAMMALN, T } from "@formulajs/formulajs";

/** Past this the series grows long and the library's approximation is as good. */
const longestSeries = 10_000;

/**
 * Student's t distribution for whole degrees of freedom, by the finite series of Abramowitz and
 * Stegun, 26.7.3 and 26.7.4; the formula library's tail carries ten digits only.
 */
export function studentCdf(t: number, freedom: number): number {
  if (freedom > longestSeries) {
    const tail = Number(T.DIST.RT(Math.abs(t), freedom));
    return t > 0 ? 1 - tail : tail;
  }
  const angle = Math.atan(Math.abs(t) / Math.sqrt(freedom));
  const cosine = Math.cos(angle);
  const isOdd = freedom % 2 === 1;
  let term = isOdd ? cosine : 1;
  let total = freedom === 1 ? 0 : term;
  for (let k = isOdd ? 3 : 2; k <= freedom - 2; k += 2) {
    term *= ((k - 1) / k) * cosine * cosine;
    total += term;
  }
  const series = Math.sin(angle) * total;
  const within = isOdd ? (2 / Math.PI) * (angle + series) : series;
  return t > 0 ? (1 + within) / 2 : (1 - within) / 2;
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
