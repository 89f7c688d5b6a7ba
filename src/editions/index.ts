/**
 * Editions of standards and codes, as data: rates and limits, each number with its clause and how
 * far it has been traced. Nothing here computes; `src/job` applies the rules.
 */
export { allEditions } from "./data";
export { sourcesIn } from "./documents";
export * from "./dwelling";
export type { Edition } from "./edition";
export * from "./equipment";
export {
  balancedRules,
  balanceRules,
  codes,
  designMatchRules,
  ductRules,
  editions,
  efficacyRules,
  findAnyEdition,
  findEdition,
  findRule,
  makeupAirRules,
  soundRules,
} from "./find";
export { finder, oneOf, UnknownNameError } from "./finder";
export type { CreditRule } from "./infiltration";
export { findCooking, findDuct, findDuty, findFan, findRoom } from "./names";
export type { Rate, System } from "./rate";
export * from "./room";
export type { CycleRule, RunTimeRule } from "./run-time";
export { leastTested, retestBands, type Sampling, samplings } from "./tolerances";
