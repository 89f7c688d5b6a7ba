/**
 * The only code that speaks Office.js: it reads the open workbook in blocks for the job, selects
 * and marks cells, writes mends and sheets, and tells of edits. Every failure is a HostError whose
 * message is a sentence for the user. Needs ExcelApi 1.13.
 */
export { isEmptyWorkbook } from "./blank-sheets";
export { HostError } from "./host-error";
export { clearMarks, hasMarks, markFindings, markLooks } from "./marks";
export { applyMend, undoMend } from "./mends";
export { readAgain, readWorkbook } from "./reading";
export { describeCell, insertFormula, selectCell, selection } from "./selection";
export type { Answer, Result } from "./self-test";
export type {
  CellPlace,
  NewAcceptance,
  PlannedBox,
  ReadProgress,
  WorkbookReading,
} from "./types";
export { watchEdits, watchSelection } from "./watch";
export { givesFile, openWorkbook, workbookBytes } from "./workbook-file";

/** What writes sheets, fetched when something is to be written. */
export const loadSheets = () => import("./sheets");

/** The test of this Excel, fetched when it is asked for. */
export const loadSelfTest = () => import("./self-test");
