/** Fitting a firm's own sheets and headings to the fields of a job. */
export { fitJob, fitSheetTitle, type JobFit } from "./fit-job";
export { type FitChoice, type FittedColumn, fitSheet, type SheetFit } from "./fit-sheet";
export { type Heading, plainName, readHeading } from "./heading";
