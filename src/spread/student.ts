import { climb, normalChance, normalQuantile } from "./normal";

/** The chance that an expanded uncertainty covers unless asked otherwise. */
export const usualChance = 0.95;

/** Past this the expansion in 1/ν is exact to the last digits, and shorter than the series. */
const longestSeries = 500;

/**
 * P(T ≤ t) of Student's t distribution for whole degrees of freedom from 1; the normal
 * distribution where they are infinite.
 *
 * The finite series of Abramowitz and Stegun 26.7.3 and 26.7.4. Its length is half the degrees of
 * freedom.
 */
export function studentChance(t: number, dof: number): number {
  if (dof === Infinity) return normalChance(t);
  requireWhole(dof);
  const within = (1 - 2 * upperTail(Math.abs(t), dof)) / 2;
  return t > 0 ? 0.5 + within : 0.5 - within;
}

function upperTail(t: number, dof: number): number {
  const angle = Math.atan(t / Math.sqrt(dof));
  const square = dof / (dof + t * t);
  const isOdd = dof % 2 === 1;
  let term = isOdd ? Math.sqrt(square) : 1;
  let sum = dof === 1 ? 0 : term;
  for (let k = isOdd ? 3 : 2; k <= dof - 2; k += 2) {
    term *= ((k - 1) / k) * square;
    sum += term;
  }
  const series = Math.sin(angle) * sum;
  return (1 - (isOdd ? (2 / Math.PI) * (angle + series) : series)) / 2;
}

/**
 * The t below which the probability lies, 0 < probability < 1; whole degrees of freedom from 1, or
 * infinite. Good to 1e-12 of t for tails down to 0.001, and to 1e-9 down to a millionth.
 */
export function studentQuantile(probability: number, dof: number): number {
  const z = normalQuantile(probability);
  if (dof === Infinity || z === 0 || !Number.isFinite(z)) return z;
  requireWhole(dof);
  if (z < 0) return -studentQuantile(1 - probability, dof);
  if (dof > longestSeries) return expansion(z, dof);
  const scale = densityScale(dof);
  const density = (t: number) => scale * (1 + (t * t) / dof) ** (-(dof + 1) / 2);
  return climb(z, (t) => (upperTail(t, dof) - (1 - probability)) / density(t));
}

/** Γ((ν+1)/2) / (√(νπ)·Γ(ν/2)), by its recurrence from ν = 1 or 2. */
function densityScale(dof: number): number {
  let ratio = dof % 2 === 1 ? 1 / Math.PI : 1 / Math.sqrt(8);
  for (let n = dof % 2 === 1 ? 3 : 4; n <= dof; n += 2)
    ratio *= ((n - 1) / (n - 2)) * Math.sqrt((n - 2) / n);
  return ratio;
}

/** Abramowitz and Stegun 26.7.5: t from z in powers of 1/ν. */
function expansion(z: number, dof: number): number {
  const q = z * z;
  const g1 = (q + 1) / 4;
  const g2 = ((5 * q + 16) * q + 3) / 96;
  const g3 = (((3 * q + 19) * q + 17) * q - 15) / 384;
  const g4 = ((((79 * q + 776) * q + 1482) * q - 1920) * q - 945) / 92160;
  return z * (1 + (g1 + (g2 + (g3 + g4 / dof) / dof) / dof) / dof);
}

function requireWhole(dof: number): void {
  if (!(dof >= 1) || dof !== Math.floor(dof))
    throw new RangeError(`${dof} degrees of freedom: give a whole number of 1 or more`);
}

/** Truncated to a whole number (GUM G.4.1), a hair up: 3.9999999999 is meant as 4. */
export function wholeDegrees(dof: number): number {
  return dof === Infinity ? dof : Math.floor(dof * (1 + 1e-9));
}

/**
 * The coverage factor: how many standard uncertainties each way hold the value with this chance,
 * 0 < chance < 1. Degrees of freedom, 1 or more, are truncated to a whole number (GUM G.4.1).
 */
export function coverage(dof: number, chance: number = usualChance): number {
  if (!(chance > 0 && chance < 1))
    throw new RangeError(`chance ${chance}: give one between 0 and 1`);
  const whole = wholeDegrees(dof);
  const isKept = chance === usualChance && (whole <= longestSeries || whole === Infinity);
  const kept = isKept ? usualFactors.get(whole) : undefined;
  if (kept !== undefined) return kept;
  const k = studentQuantile((1 + chance) / 2, whole);
  if (isKept) usualFactors.set(whole, k);
  return k;
}

/** Factors of the usual chance, by degrees of freedom: a series for every row of a sheet is slow. */
const usualFactors = new Map<number, number>();
