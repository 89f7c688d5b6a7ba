/** The job as data: the rules for a reading, the sheets of a job workbook and the checks on them. */
export { checkJob, type JobCheck, type Summary, serialOf } from "./check-job";
export {
  type Finding,
  type FindingKind,
  findingKinds,
  kindEntry,
  type Mend,
  type Severity,
  severities,
  type Write,
} from "./findings";
export { type FitChoice, fitSheetTitle, type JobFit, readHeading, type SheetFit } from "./fit";
export {
  type CellError,
  type CellValue,
  cellName,
  type Fresh,
  type Grid,
  type JobFile,
} from "./grid";
export { type Job, readJob, type Settings } from "./read";
export * from "./rules";
export * from "./sheets";
export { shown } from "./words";
