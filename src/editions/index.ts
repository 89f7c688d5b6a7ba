/**
 * Editions of standards and codes, as data: rates and limits, each number with its clause and how
 * far it has been traced. Nothing here computes; `src/job` applies the rules.
 */
export { type BalancedRule, balancedRules } from "./balanced";
export { type Code, codes } from "./codes";
export * from "./ducts";
export * from "./edition";
export * from "./efficacy";
export {
  editions,
  findDuct,
  findDuty,
  findEdition,
  findFan,
  findRoom,
  findRule,
  UnknownNameError,
} from "./find";
export type { CreditRule, InfiltrationRule } from "./infiltration";
export { type MakeupAirRule, makeupAirRules } from "./makeup-air";
export type { Rate, System } from "./rate";
export type { CycleRule, EffectivenessRow, RunTimeRule } from "./run-time";
export { type SoundRule, soundRules } from "./sound";
export { type DesignMatchRule, designMatchRules, retestBands } from "./tolerances";
