/** Sheets that are written: findings, the fit, a new job's sheets, planned openings, records. */
export { acceptFinding, type NewAcceptance, withdrawAcceptance } from "./accepted-sheet";
export { writeFindingsSheet } from "./findings-sheet";
export { saveFit } from "./fit-sheet";
export { addJobSheets, jobSheetNames } from "./job-sheets";
export { writePlan } from "./later-plan";
export { writeOpenings } from "./openings";
