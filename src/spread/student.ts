import { betaFraction } from "./beta";
import { climb, normalChance, normalQuantile } from "./normal";

/** The chance that an expanded uncertainty covers unless asked otherwise. */
export const usualChance = 0.95;

/** Past this the expansions in 1/ν are exact to the last digits. */
const longestRecurrence = 500;

/**
 * P(T ≤ t) of Student's t distribution for whole degrees of freedom from 1; the normal
 * distribution where they are infinite. Full precision in either tail.
 */
export function studentChance(t: number, dof: number): number {
  if (dof === Infinity) return normalChance(t);
  requireWhole(dof);
  return t > 0 ? 1 - upperTail(t, dof) : upperTail(-t, dof);
}

/** ½ I_x(ν/2, ½) with x = ν/(ν + t²) (Abramowitz and Stegun 26.7.1), from the side that is short. */
function upperTail(t: number, dof: number): number {
  if (t === Infinity) return 0;
  // So near the normal distribution, one term of the expansion in 1/ν is all there is to it.
  if (dof > 1e6) return normalChance(-t) + (studentDensity(t, dof) * (t ** 3 + t)) / (4 * dof);
  const whole = dof + t * t;
  const [x, y] = [dof / whole, (t * t) / whole];
  // x^(ν/2) · √y / B(ν/2, ½)
  const weight = Math.exp((dof / 2) * Math.log1p(-y)) * Math.sqrt(y * dof) * densityScale(dof);
  if (y < 3 / (dof + 5)) return 0.5 - weight * betaFraction(y, 0.5, dof / 2);
  return (weight * betaFraction(x, dof / 2, 0.5)) / dof;
}

/** The density of the distribution at t. */
export function studentDensity(t: number, dof: number): number {
  return densityScale(dof) * Math.exp((-(dof + 1) / 2) * Math.log1p((t * t) / dof));
}

/**
 * The t below which the probability lies, 0 < probability < 1; whole degrees of freedom from 1, or
 * infinite. Good to 1e-12 of t.
 */
export function studentQuantile(probability: number, dof: number): number {
  const z = normalQuantile(probability);
  if (dof === Infinity || z === 0 || !Number.isFinite(z)) return z;
  requireWhole(dof);
  if (probability > 0.5) return -studentQuantile(1 - probability, dof);
  if (dof > longestRecurrence) return expansion(z, dof);
  return -climb(-z, (t) => (upperTail(t, dof) - probability) / studentDensity(t, dof));
}

/** Γ((ν+1)/2) / (√(νπ)·Γ(ν/2)), by its recurrence from ν = 1 or 2, or in powers of 1/ν. */
function densityScale(dof: number): number {
  if (dof > longestRecurrence) {
    const n = 1 / (4 * dof);
    return (1 - n * (1 - n * (0.5 + n * (2.5 - n * 2.625)))) / Math.sqrt(2 * Math.PI);
  }
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
  const isKept = chance === usualChance && (whole <= longestRecurrence || whole === Infinity);
  const kept = isKept ? usualFactors.get(whole) : undefined;
  if (kept !== undefined) return kept;
  const k = studentQuantile((1 + chance) / 2, whole);
  if (isKept) usualFactors.set(whole, k);
  return k;
}

/** Factors of the usual chance, by degrees of freedom: a series for every row of a sheet is slow. */
const usualFactors = new Map<number, number>();
