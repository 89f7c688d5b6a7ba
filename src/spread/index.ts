/**
 * Spread: measurement uncertainty after JCGM 100:2008 (GUM) and JCGM 106:2012, over the slopes of
 * a formula text. `propagate` turns inputs with their spreads into a budget; `evaluate` has the
 * evaluations of type A and B; beside them the normal and Student distributions, the chance that a
 * requirement is met, and what pairs of readings say: regression and agreement.
 *
 * It knows nothing of fans: the trade's own budgets are rules of `src/job`.
 */
export {
  type Agreement,
  agreement,
  agreementFactor,
  nextFactor,
  percentDifferences,
} from "./agreement";
export { betaFraction } from "./beta";
export type { Budget, Spread } from "./budget";
export { acceptFrom, chanceMet } from "./conformity";
export {
  fullWidth,
  halfWidth,
  repeats,
} from "./evaluate";
export { normalChance, normalQuantile } from "./normal";
export { propagate } from "./propagate";
export { throughOrigin } from "./regression";
export {
  coverage,
  studentChance,
  studentDensity,
  studentQuantile,
  usualChance,
  wholeDegrees,
} from "./student";
