/** A job workbook read into tables, in the job's own units. */
export { BoxList } from "./box-list";
export { type BoxProof, boxProofs } from "./box-proofs";
export { type DwellingAccount, dwellingAccount, fanDeficit } from "./dwelling-account";
export { fanBudget } from "./fan-budget";
export { FanRows, type Maybe } from "./fan-rows";
export { type Instrument, InstrumentList } from "./instrument-list";
export { type Job, readJob } from "./job";
export {
  type JudgeBy,
  type Judging,
  type MeterLimits,
  readSettings,
  type Settings,
} from "./settings";
export { type Gap, Table } from "./table";
