import { entryUnder } from "../../job";
import type { TypedCell } from "../host";
import { listedFor } from "./listed";
import { headRow, isFormula, type RowsAt, typedColumns } from "./typed-cells";

/**
 * What a blank row of a list begins with: texts and days that stand in both rows above it, or that
 * rows of a job repeat anyway; in the first row a name that is the only one of its list. Readings
 * and other numbers are never repeated.
 */
export function repeated(at: RowsAt, row: number): TypedCell[] {
  const { book, sheet } = at;
  const above = at.extent.rowFrom(row, -1);
  const head = headRow(at, row);
  const isRepeated = (col: number) =>
    entryUnder(sheet.name, book.value(sheet.name, head, col)) === "repeated";
  return typedColumns(at, row).flatMap((col) => {
    if (book.value(sheet.name, row, col) !== null) return [];
    if (above === head) {
      const [only, ...others] = isRepeated(col) ? listedFor(at, row, col) : [];
      return only === undefined || others.length > 0 ? [] : [{ row, col, text: only }];
    }
    const value = book.value(sheet.name, above, col);
    const isKept =
      typeof value === "string" || (typeof value === "number" && isDay(at, above, col));
    if (!isKept || isFormula(at, above, col)) return [];
    if (!isRepeated(col) && book.value(sheet.name, above - 1, col) !== value) return [];
    return [{ row, col, text: book.typedText(sheet.name, above, col) }];
  });
}

/** Whether a number is shown as a day. */
function isDay({ book, sheet }: RowsAt, row: number, col: number): boolean {
  return /^\d{4}-\d\d-\d\d/.test(book.typedText(sheet.name, row, col));
}
