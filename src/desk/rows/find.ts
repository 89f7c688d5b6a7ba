import type { TypedCell } from "../host";
import { isFormula, type RowsAt } from "./typed-cells";

interface Spot {
  readonly row: number;
  readonly col: number;
}

/** The next shown cell after a spot, row by row and round again, in whose text or content it stands. */
export function nextWith(at: RowsAt, wanted: string, after: Spot, sign: 1 | -1): Spot | undefined {
  const { usedRows: rows, usedCols: cols } = at.extent;
  const count = rows * cols;
  const from = Math.min(after.row, rows - 1) * cols + Math.min(after.col, cols - 1);
  for (let i = 1; i <= count; i++) {
    const place = (((from + sign * i) % count) + count) % count;
    const [row, col] = [Math.floor(place / cols), place % cols];
    if (at.extent.isShown(row, col) && holds(at, row, col, wanted)) return { row, col };
  }
  return undefined;
}

/** The typed cells of the sheet with every occurrence replaced; formulas are left alone. */
export function replacedAll(at: RowsAt, wanted: string, by: string): TypedCell[] {
  const cells: TypedCell[] = [];
  for (let row = 0; row < at.extent.usedRows; row++)
    for (let col = 0; col < at.extent.usedCols; col++)
      cells.push(...replaced(at, { row, col }, wanted, by));
  return cells;
}

/** One cell with every occurrence replaced; none where it is a formula or does not hold it. */
export function replaced(at: RowsAt, { row, col }: Spot, wanted: string, by: string): TypedCell[] {
  if (wanted === "" || isFormula(at, row, col)) return [];
  const content = at.book.typedText(at.sheet.name, row, col);
  const text = content.replace(new RegExp(escaped(wanted), "giu"), () => by);
  return text === content ? [] : [{ row, col, text }];
}

function holds({ book, sheet }: RowsAt, row: number, col: number, wanted: string): boolean {
  const value = book.value(sheet.name, row, col);
  if (value === null) return false;
  const small = wanted.toLowerCase();
  return [book.text(sheet.name, row, col), book.typedText(sheet.name, row, col)].some((text) =>
    text.toLowerCase().includes(small),
  );
}

const escaped = (text: string) => text.replace(/[\\^$.*+?()[\]{}|]/g, "\\$&");
