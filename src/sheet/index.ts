/**
 * A small spreadsheet: it reads the formulas of a workbook, evaluates them as Excel does, knows
 * which cell depends on which, and keeps the stored value of every formula it cannot evaluate.
 */
export type { WorkbookView } from "./book";
export { HeldModel } from "./held";
export type { Change } from "./ledger";
export {
  type ModelOptions,
  type SheetCells,
  SheetModel,
} from "./model";
export { FormulaSyntaxError } from "./parse";
export { inStoredForm, inTypedForm } from "./spelling";
export { readTyped } from "./typed";
