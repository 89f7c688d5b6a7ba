/**
 * The trade's rules, each with its arguments, work, sums, source and words: one file a worksheet
 * function. What a function gives, how it is explained, its native form and its help come from it.
 */
export {
  airRanges,
  airState,
  airViews,
  requireMeant,
} from "./air/air";
export { call, explainCall, isByRow, ruleFor, rules } from "./call";
export * from "./constants";
export type { Argument } from "./contract/argument";
export { type CallWorking, callLines, callText } from "./contract/explain";
export type { Example, ExampleArgument, ExampleCell, Help } from "./contract/help";
export type { Rule } from "./contract/rule";
export { flowUnit, type RequiredRate, Ruling } from "./contract/ruling";
export type { SaidSource, SaidSum } from "./contract/say";

export { readYesNo } from "./contract/yes-no";
export { balanceOf } from "./credits/balance";
export { rateIfBalanced, readSystemKind, type SystemKind } from "./credits/balanced-rate";
export { deficitOf } from "./credits/deficit";
export { withDeficits } from "./credits/deficit-rate";
export { asksNoFan, fanRate } from "./credits/fan-rate";
export { infiltration } from "./credits/infiltration";
export { rateWhileOn } from "./credits/on-rate";
export { DesignMatch, designMatch } from "./equipment/design-match";
export { longestDuct } from "./equipment/duct-limit";

export { makeupAir } from "./equipment/makeup-air";
export { loudest } from "./equipment/max-sone";
export { leastEfficacy } from "./equipment/min-efficacy";
export { aimedPressure, aimIn } from "./flow/aimed-pressure";
export { expectedOpening } from "./flow/expected-opening";
export { type NextOpening, nextOpening } from "./flow/next-opening";
export { rangeStatus, rangeStatusColumn } from "./flow/range-status";
export * from "./instrument";
export * from "./instruments";
export { deviceFlow } from "./instruments/device-flow";
export { deviceBudget } from "./instruments/device-spread";
export {
  panReading,
  panStatus,
  usualPan,
} from "./instruments/pan-status";
export { readStatus, verdictColumn } from "./judging/verdict";
export * as helps from "./made/help";
export {
  compared,
  comparedText,
  type NameKindId,
  nameKinds,
  numberOfName,
} from "./native/names";
export type { NativeCall, Operand, Part } from "./native/native-call";
export { hasNativeForm, nativeFormula } from "./native/native-formula";
export { NoNativeForm } from "./native/no-native-form";
export type { OpeningList } from "./native/opening-list";
export type { Table, TableCell, TableMaker } from "./native/table";
export { sumOver, wrong } from "./native/text";
export {
  areaOf,
  type Opening,
  OpeningsError,
  openingsNamed,
  splitLabels,
} from "./openings/openings-label";
export * from "./outcomes";
export * from "./proof";
export * from "./reach";
export { everyEdition, everyNumber, type NumberEntry, numbersOf } from "./reading-along/numbers";
export { dwellingRate } from "./required/dwelling-rate";
export { NoneAsked, type RoomFacts, roomRate, roomRule } from "./required/room-rate";
export * from "./small-hole";
export { flowBudget, type Manometer } from "./spread/flow-budget";
export { unboxedBudget } from "./spread/unboxed-budget";
export { estimateUnboxed } from "./spread/unboxed-estimate";
export * from "./ways";
