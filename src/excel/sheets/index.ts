/** Sheets that are written: findings, the fit, a new job's sheets, planned openings, records. */
export { acceptFinding, withdrawAcceptance } from "./accepted-sheet";
export { writeFindingsSheet } from "./findings-sheet";
export { saveFit } from "./fit-sheet";
export { addJobSheets, isEmptyWorkbook } from "./job-sheets";
export { writePlan } from "./later-plan";
export { writeOpenings } from "./openings";
