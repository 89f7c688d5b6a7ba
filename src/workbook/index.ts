/**
 * .xlsx packages: read, edited and written without losing anything. A part that was not touched is
 * written back byte for byte; an edited sheet differs only in the cells that changed.
 */
export type {
  Arrangement,
  ConditionalFormat,
  ConditionalOperator,
  HeaderText,
  Margins,
  PageSpec,
  Validation,
} from "./arrange/spec";
export type { ChartSpec } from "./chart/spec";
export { CopiedFormula } from "./copied-formula";
export { WorkbookError } from "./error";
export { defaultLimits } from "./limits";
export type {
  Cell,
  CellSpec,
  CellVisitor,
  DefinedName,
  EdgeStyle,
  Edges,
  HostZip,
  Limits,
  Sheet,
  SheetSpec,
  SheetState,
  StyleSpec,
  TableInfo,
} from "./types";
export { Workbook } from "./workbook";
