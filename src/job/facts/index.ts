/** What is known of each fan and dwelling of a job, decided once. */
export type { DwellingFacts } from "./dwelling-facts";
export { expectedIn } from "./expected";
export { factsOf } from "./facts";
export * from "./fan-demands";
export type { FanFacts } from "./fan-facts";
export { type Input, restsOn } from "./rests-on";
