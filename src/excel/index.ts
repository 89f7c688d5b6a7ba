/**
 * The only code that speaks Office.js: it reads the open workbook in blocks for the job, selects
 * and marks cells, writes mends and sheets, and tells of edits. Every failure is a HostError whose
 * message is a sentence for the user. Needs ExcelApi 1.13.
 */
export { HostError } from "./host-error";
export { clearMarks, hasMarks, markFindings, markLooks } from "./marks";
export { applyMend, undoMend } from "./mends";
export { readAgain, readWorkbook } from "./reading";
export { describeCell, insertFormula, selectCell, selection } from "./selection";
export type { Answer, Result } from "./self-test";
export {
  acceptFinding,
  addJobSheets,
  isEmptyWorkbook,
  saveFit,
  withdrawAcceptance,
  writeFindingsSheet,
  writeOpenings,
  writePlan,
} from "./sheets";
export type {
  CellPlace,
  NewAcceptance,
  PlannedBox,
  ReadProgress,
  WorkbookReading,
} from "./types";
export { watchEdits, watchSelection } from "./watch";
export { givesFile, openWorkbook, workbookBytes } from "./workbook-file";

/** The test of this Excel, fetched when it is asked for. */
export const loadSelfTest = () => import("./self-test");
