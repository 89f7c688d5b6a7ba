/** Sheets that are written: findings, the fit, a new job's sheets, planned openings, records. */
export { acceptFinding, withdrawAcceptance } from "./accepted-sheet";
export { writeFindingsSheet } from "./findings-sheet";
export { saveFit } from "./fit-sheet";
export { addJobSheets } from "./job-sheets";
export { writeOpenings } from "./openings";
export { writePlan } from "./write-plan";
