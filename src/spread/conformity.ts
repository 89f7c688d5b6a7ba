import { oneValue } from "../algebra";
import { acceptanceLimit } from "../formulas";
import { studentChance, studentQuantile, wholeDegrees } from "./student";

/**
 * The chance that the true flow is at least the required one, given the measured flow and its
 * standard spread u: Φ((flow − required)/u) (JCGM 106:2012, 7.3.1). With few degrees of freedom
 * behind u the distribution is a scaled and shifted t (JCGM 101:2008, 6.4.9). With u = 0 it is 1 or 0.
 */
export function chanceMet(
  flow: number,
  u: number,
  required: number,
  dof: number = Number.POSITIVE_INFINITY,
): number {
  if (u === 0) return Number.isNaN(flow - required) ? Number.NaN : flow >= required ? 1 : 0;
  return studentChance((flow - required) / u, wholeDegrees(dof));
}

/**
 * The acceptance limit of guarded acceptance: the least measured value at which the chance that
 * the requirement is truly met reaches `chance`, 0 < chance < 1 (JCGM 106:2012, 8.3.2). At a
 * chance of 0.5 it is the requirement itself: simple acceptance.
 */
export function acceptFrom(
  required: number,
  u: number,
  chance: number,
  dof: number = Number.POSITIVE_INFINITY,
): number {
  return oneValue(acceptanceLimit, {
    R: required,
    z: studentQuantile(chance, wholeDegrees(dof)),
    u,
  });
}
