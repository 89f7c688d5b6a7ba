/** Fitting a firm's own sheets and headings to the fields of a job. */
export type { FitChoice } from "../grid";
export {
  firmFileOf,
  fitHeadings,
  fitSheetTitle,
  readFirmFile,
  rowOfChoice,
  withAnswer,
  withFirms,
} from "./answers";
export { fitJob, type JobFit } from "./fit-job";
export { type SheetFit, searchedRows } from "./fit-sheet";
export { plainName, readHeading } from "./heading";
