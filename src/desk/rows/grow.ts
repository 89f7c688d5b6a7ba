import type { TypedCell } from "../host";
import { shifted } from "../text/shift";
import { headRow, isFormula, type RowsAt } from "./typed-cells";

/**
 * The formulas that a row below the last one of its list takes over from the row above, once
 * something is typed into it. None where the row has formulas or the one above is no row of a list.
 */
export function formulasFor(at: RowsAt, row: number): TypedCell[] {
  const { book, sheet, extent } = at;
  if (row === 0 || row - 1 <= headRow(at, row)) return [];
  const cells: TypedCell[] = [];
  for (let col = 0; col < extent.usedCols; col++) {
    if (isFormula(at, row, col)) return [];
    if (!isFormula(at, row - 1, col) || book.value(sheet.name, row, col) !== null) continue;
    const above = book.typedText(sheet.name, row - 1, col);
    cells.push({ row, col, text: shifted(above, { row: row - 1, col }, { row, col }) });
  }
  return cells;
}
