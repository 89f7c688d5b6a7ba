/** Sheets that are written: findings, the fit, a new job's sheets, planned openings. */
export { writeFindingsSheet } from "./findings-sheet";
export { saveFit } from "./fit-sheet";
export { addJobSheets, jobSheetNames } from "./job-sheets";
export { writeOpenings } from "./openings";
