/** A job workbook read into tables, in the job's own units. */

export { type JobAgain, partAround, readJobAgain } from "./again";
export { type BoxProof, boxProofs } from "./box-proofs";
export { Columns, definedAs } from "./columns";
export { constantInUse } from "./constant-in-use";
export { dwellingRow } from "./dwelling-rows";
export { FanRows } from "./fan-rows";
export type { FirmSheets, Replaced } from "./firm";

export { flowsOf, type Job, readJob } from "./job";
export { attempt, type Maybe, valueIn, valueOrThrow } from "./maybe";
export { fieldOfRole, roomOf, unitsOfRole } from "./roles";
export type { SecondSheet } from "./second-sheets";
export type { Settings } from "./settings";
export { patched, Table } from "./table";
