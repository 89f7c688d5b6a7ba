import { worksheetFunctions } from "../../functions";
import { cellName, InputError, sheetPrefix } from "../cells";
import type { Grid, JobFile } from "../job";
import { inTypedForm } from "../sheet";
import { agreementOf } from "./agreement";
import { prefix, traceCall } from "./call-trace";
import { callsIn, wholeOf } from "./calls";
import { picksOf } from "./picks";
import { gridOf, readsIn, seenAt } from "./places";
import { anchorOf } from "./spilled";
import { spreadBeside } from "./spread-beside";
import type { Trace } from "./trace-data";

/** A sheet or a cell that the workbook does not have; the message is one line. */
export class TraceError extends InputError {}

/**
 * Why a cell holds what it holds: its formula as typed, the calls of our functions in it with their
 * sums and sources, what it reads, and whether the stored value is what the formula gives. Rows and
 * columns from 0. Throws a TraceError for a sheet that is not there or a cell outside its used
 * range.
 */
export function trace(file: JobFile, sheet: string, row: number, col: number): Trace {
  const grid = gridOf(file, sheet);
  if (!grid)
    throw new TraceError(
      `no sheet "${sheet}": the workbook has ${file.sheets.map(({ name }) => name).join(", ")}`,
    );
  requireUsed(grid, row, col);
  const seen = seenAt(grid.name, row, col, file);
  const none = { formula: null, calls: [], reads: [], picks: [] };
  const own = grid.formula(row, col);
  const anchor = own === null ? anchorOf(grid, row, col, file) : undefined;
  const written = anchor ? grid.formula(anchor.row, anchor.col) : own;
  if (written === null) return { ...seen, ...none, kind: seen.value === null ? "blank" : "typed" };

  const formula = inTypedForm(written, worksheetFunctions);
  const at = { sheet: grid.name, ...(anchor ?? { row, col }) };
  const offset = { row: row - at.row, col: col - at.col };
  const spilledFrom = anchor && { spilledFrom: seenAt(at.sheet, at.row, at.col, file) };
  const calls = callsIn(formula);
  const ours = calls.filter(({ name }) => name.startsWith(prefix));
  const known = ours.filter(({ name }) => isOurs(name));
  const told = known.map((call) => traceCall(call, at, offset, file));
  const spread = spreadBeside(told, grid, row, file);
  return {
    ...seen,
    ...spilledFrom,
    kind: known.length > 0 ? "ours" : "native",
    formula: `=${formula}`,
    calls: told,
    reads: readsIn(wholeOf(formula), at, file),
    picks: picksOf(calls, at, file),
    agreement: anchor ? { state: "agrees" } : agreementOf(formula, at, seen.value, file),
    ...(spread ? { spread } : {}),
  };
}

const ids = new Set(worksheetFunctions.map(({ id }) => id));
const isOurs = (name: string) => ids.has(name.slice(prefix.length));

function requireUsed(grid: Grid, row: number, col: number): void {
  const { rowCount, colCount } = grid;
  if (row >= 0 && col >= 0 && row < rowCount && col < colCount) return;
  const used =
    rowCount > 0 && colCount > 0
      ? `the sheet is used from A1 to ${cellName(rowCount - 1, colCount - 1)}`
      : "the sheet is empty";
  throw new TraceError(`no cell ${sheetPrefix(grid.name)}${cellName(row, col)}: ${used}`);
}
