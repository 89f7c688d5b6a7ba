/** The job as data: the rules for a reading, the sheets of a job workbook and the checks on them. */

export {
  type Acceptance,
  acceptanceHeadings,
  acceptedSheetTitle,
  fingerprintOf,
  readAcceptances,
} from "./accepting";
export {
  checkJob,
  type FurtherCheck,
  isFault,
  type JobCheck,
  type Summary,
} from "./check-job";
export { codeKinds, codesExplained, codesText, type JobCodes } from "./codes";
export * from "./columns";
export {
  type Change,
  type ChangeKind,
  type ComparingOptions,
  compareJobs,
  type RateUnder,
  underEdition,
} from "./comparing";
export * from "./estimating";
export {
  type DwellingFacts,
  designAsked,
  ductAllowed,
  efficacyAsked,
  expectedIn,
  type Facts,
  type FanAir,
  type FanFacts,
  factsOf,
  isKitchen,
  makeupAsked,
  mostFlow,
  soundAllowed,
  type TwoOpenings,
} from "./facts";
export {
  type Accepted,
  type CellAt,
  type Finding,
  type FindingKind,
  findingKinds,
  isOpen,
  kindEntry,
  type Mend,
  type Question,
  type Severity,
  severities,
  type Write,
} from "./findings";
export {
  type FitChoice,
  firmFileOf,
  fitHeadings,
  fitJob,
  fitSheetTitle,
  isSameQuestion,
  type JobFit,
  plainName,
  readFirmFile,
  readHeading,
  rowOfChoice,
  type SheetFit,
} from "./fit";
export type {
  Calculator,
  Fresh,
  Grid,
  JobFile,
} from "./grid";
export * from "./planning";
export * from "./planning";
export { type Provenance, provenanceLine, provenanceOf, type Standing } from "./provenance";
export {
  attempt,
  type BoxProof,
  boxProofs,
  constantInUse,
  dwellingRow,
  FanRows,
  fieldOfRole,
  type Job,
  type Maybe,
  readJob,
  type Settings,
  Table,
  unitsOfRole,
  valueIn,
} from "./read";
export * from "./rules";
export { listed } from "./words";
