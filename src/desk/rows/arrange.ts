import { InputError } from "../../cells";
import type { CellText } from "../book";
import { headRow, isFormula, type RowsAt } from "./typed-cells";

/** The typed cells of a list, row by row: what is moved when rows are. Formulas stay where they are. */
interface List {
  readonly top: number;
  readonly bottom: number;
  readonly columns: readonly number[];
}

/**
 * The list around a row: from below its headings to its last row with a typed cell. Throws an InputError
 * that says why its rows cannot be moved: no headings, or a column of formulas that is broken by
 * typed values, which a move would tear apart.
 */
function listAround(at: RowsAt, row: number): List {
  const head = headRow(at, row);
  if (head < 0 || row <= head)
    throw new InputError("Choose a cell in a list with headings above it, then try again.");
  const { book, sheet, extent } = at;
  const isHeaded = (col: number) => book.value(sheet.name, head, col) !== null;
  const headed = Array.from({ length: extent.usedCols }, (_, col) => col).filter(isHeaded);
  const rows = { top: head + 1, bottom: extent.lastUsed.row };
  const columns = headed.filter((col) => !isFormula(at, rows.top, col));
  for (let each = rows.top; each <= rows.bottom; each++)
    for (const col of columns)
      if (isFormula(at, each, col))
        throw new InputError(
          `${sheet.name}: row ${each + 1} has a formula where the first row of the list has none. Rows are moved only where each column is all typed or all formulas.`,
        );
  const isFilled = (each: number) =>
    columns.some((col) => book.value(sheet.name, each, col) !== null);
  while (rows.bottom > rows.top && !isFilled(rows.bottom)) rows.bottom--;
  return { ...rows, columns };
}

/** The texts that put an empty row at `row`: every typed cell from there on moves down by one. */
export function openedAt(at: RowsAt, row: number): CellText[] {
  const list = listAround(at, row);
  const order = [-1, ...range(row, list.bottom)];
  return moved(at, list.columns, row, order);
}

/** The texts that take a row out: every typed cell below it moves up by one. */
export function closedAt(at: RowsAt, row: number): CellText[] {
  const list = listAround(at, row);
  return moved(at, list.columns, row, [...range(row + 1, list.bottom), -1]);
}

/** The texts that put the rows of a list in the order of a column; blanks come last. */
export function sortedBy(at: RowsAt, row: number, col: number, sign: 1 | -1): CellText[] {
  const { book, sheet } = at;
  const list = listAround(at, row);
  const rows = range(list.top, list.bottom);
  const values = new Map(rows.map((each) => [each, book.value(sheet.name, each, col)]));
  const order = [...rows].sort((a, b) => {
    const [x, y] = [values.get(a) ?? null, values.get(b) ?? null];
    if (x === null || y === null) return Number(x === null) - Number(y === null) || a - b;
    return sign * compare(x, y) || a - b;
  });
  return moved(at, list.columns, list.top, order);
}

function compare(x: unknown, y: unknown): number {
  if (typeof x === "number" && typeof y === "number") return x - y;
  if (typeof x === "number" || typeof y === "number") return typeof x === "number" ? -1 : 1;
  return String(x).localeCompare(String(y), undefined, { numeric: true, sensitivity: "base" });
}

/** The rows from `top` on filled with the typed cells of other rows; −1 stands for an empty one. */
function moved(
  { book, sheet }: RowsAt,
  columns: readonly number[],
  top: number,
  order: readonly number[],
): CellText[] {
  return order.flatMap((from, i) =>
    columns.flatMap((col) => {
      const row = top + i;
      const text = from < 0 ? "" : book.content(sheet.name, from, col);
      return text === book.content(sheet.name, row, col) ? [] : [{ row, col, text }];
    }),
  );
}

function range(from: number, to: number): number[] {
  return Array.from({ length: Math.max(0, to - from + 1) }, (_, i) => from + i);
}
