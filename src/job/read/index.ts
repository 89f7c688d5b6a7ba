/** A job workbook read into tables, in the job's own units. */
export { areaLimitOf } from "./area-limit";
export { BoxList } from "./box-list";
export { type BoxProof, boxProofs } from "./box-proofs";
export { type DwellingAccount, dwellingAccount, fanDeficit } from "./dwelling-account";
export { dwellingRow } from "./dwelling-rows";
export { fanBudget } from "./fan-budget";
export {
  designAsked,
  ductAllowed,
  efficacyAsked,
  isKitchen,
  makeupAsked,
  mostFlow,
  soundAllowed,
} from "./fan-demands";
export { FanRows } from "./fan-rows";
export { type Instrument, InstrumentList } from "./instrument-list";
export { type Job, readJob } from "./job";
export { attempt, type Maybe, valueIn } from "./maybe";
export { readSettings, type Settings } from "./settings";
export { type Gap, Table } from "./table";
