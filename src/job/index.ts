/** The job as data: the rules for a reading, the sheets of a job workbook and the checks on them. */

export * from "../rules";
export {
  acceptanceHeadings,
  acceptedSheetTitle,
  fingerprintOf,
} from "./accepting";
export {
  checkJob,
  type FurtherCheck,
  type JobCheck,
  type KeptLook,
  type Summary,
} from "./check-job";
export { codeKinds, codesExplained, codesText, type JobCodes } from "./codes";
export * from "./columns";
export {
  type Change,
  type ChangeKind,
  compareChecks,
  type RateUnder,
  shownStates,
  underEdition,
} from "./comparing";
export * from "./estimating";
export {
  type DwellingFacts,
  designAsked,
  ductAllowed,
  efficacyAsked,
  type FanFacts,
  factsOf,
  isKitchen,
  makeupAsked,
  mostFlow,
  soundAllowed,
} from "./facts";
export {
  type Accepted,
  type Finding,
  type FindingKind,
  findingKinds,
  isFault,
  isOpen,
  type Mend,
  type Severity,
  severities,
  sharedWords,
  type Write,
} from "./findings";
export {
  type FitChoice,
  firmFileOf,
  fitHeadings,
  fitSheetTitle,
  plainName,
  readFirmFile,
  readHeading,
  rowOfChoice,
  type SheetFit,
  searchedRows,
  withAnswer,
  withFirms,
} from "./fit";
export type {
  Calculator,
  Fresh,
  Grid,
  JobFile,
} from "./grid";
export * from "./planning";
export { type Provenance, provenanceLine, provenanceOf } from "./provenance";
export {
  attempt,
  type BoxProof,
  boxProofs,
  constantInUse,
  dwellingRow,
  fieldOfRole,
  flowsOf,
  type Job,
  type Maybe,
  type Replaced,
  readJob,
  type Settings,
  Table,
  unitsOfRole,
  valueIn,
} from "./read";
export { asSentence, count, listed } from "./words";
