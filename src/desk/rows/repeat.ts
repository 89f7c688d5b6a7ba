import type { CellText } from "../book";
import { isFormula, type RowsAt, typedColumns } from "./typed-cells";

/**
 * What the next row of a list is likely to share with this one: texts and days that stand in this
 * row and in the one above it. Readings and other numbers are never repeated.
 */
export function repeated(at: RowsAt, row: number): CellText[] {
  const { book, sheet } = at;
  const next = at.extent.rowFrom(row, 1);
  return typedColumns(at, row).flatMap((col) => {
    const value = book.value(sheet.name, row, col);
    const isKept = typeof value === "string" || (typeof value === "number" && isDay(at, row, col));
    if (!isKept || isFormula(at, row, col)) return [];
    if (book.value(sheet.name, row - 1, col) !== value) return [];
    if (book.value(sheet.name, next, col) !== null) return [];
    return [{ row: next, col, text: book.content(sheet.name, row, col) }];
  });
}

/** Whether a number is shown as a day. */
function isDay({ book, sheet }: RowsAt, row: number, col: number): boolean {
  return /^\d{4}-\d\d-\d\d/.test(book.content(sheet.name, row, col));
}
