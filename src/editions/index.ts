/**
 * Editions of standards and codes, as data: rates and limits, each number with its clause and how
 * far it has been traced. Nothing here computes; `src/job` applies the rules.
 */
export * from "./edition";
export { editions, findDuty, findEdition, findRoom, UnknownNameError } from "./find";
