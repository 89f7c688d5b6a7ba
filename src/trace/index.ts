/**
 * Why a cell holds the number it holds, for a reviewer who audits cell by cell: formula, numbers,
 * units, clause, and the way back to the typed readings. Works on any workbook read as a job file.
 */
export { traceBack } from "./back";
export { withRow } from "./given-by-row";
export { lines, valueText } from "./lines";
export { cellNamed } from "./places";
export { TraceError, trace } from "./trace";
export type {
  Agreement,
  ArgumentTrace,
  CallTrace,
  CellSeen,
  Read,
  Trace,
} from "./trace-data";
