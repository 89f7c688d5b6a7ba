/** What is known of each fan and dwelling of a job, decided once. */
export type { DwellingFacts } from "./dwelling-facts";
export { expectedIn } from "./expected";
export { type Facts, factsOf } from "./facts";
export * from "./fan-demands";
export type { FanAir, FanFacts } from "./fan-facts";
export { type Input, restsOn } from "./rests-on";
export type { TwoOpenings } from "./two-openings";
