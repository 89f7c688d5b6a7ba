import { InputError } from "../../cells";
import type { TypedCell } from "../host";
import { shifted } from "../text/shift";
import { headRow, isFormula, type RowsAt } from "./typed-cells";

/**
 * The cells of a list that move with its rows. Columns all of formulas stay where they are; in a
 * column of formulas over which something was typed all move, each formula adjusted to its new row.
 */
interface List {
  readonly top: number;
  readonly bottom: number;
  readonly columns: readonly Column[];
}

interface Column {
  readonly col: number;
  /** A row with a formula, in a column that has typed cells too; undefined where all are typed. */
  readonly formulaAt: number | undefined;
}

/** The list around a row: from below its headings to its last row with a typed cell. */
function listAround(at: RowsAt, row: number): List {
  const head = headRow(at, row);
  if (head < 0 || row <= head)
    throw new InputError("Choose a cell in a list with headings above it, then try again.");
  const { book, sheet, extent } = at;
  const top = head + 1;
  let bottom = extent.lastUsed.row;
  const rows = range(top, bottom);
  const columns: Column[] = [];
  for (let col = 0; col < extent.usedCols; col++) {
    if (book.value(sheet.name, head, col) === null) continue;
    const formulaAt = rows.find((each) => isFormula(at, each, col));
    const isTyped = (each: number) =>
      book.value(sheet.name, each, col) !== null && !isFormula(at, each, col);
    if (formulaAt === undefined || rows.some(isTyped)) columns.push({ col, formulaAt });
  }
  const isFilled = (each: number) =>
    columns.some(
      ({ col, formulaAt }) => formulaAt === undefined && book.value(sheet.name, each, col) !== null,
    );
  while (bottom > top && !isFilled(bottom)) bottom--;
  return { top, bottom, columns };
}

/** The texts that put an empty row at `row`: every typed cell from there on moves down by one. */
export function openedAt(at: RowsAt, row: number): TypedCell[] {
  const list = listAround(at, row);
  const order = [-1, ...range(row, list.bottom)];
  return moved(at, list.columns, row, order);
}

/** The texts that take a row out: every typed cell below it moves up by one. */
export function closedAt(at: RowsAt, row: number): TypedCell[] {
  const list = listAround(at, row);
  return moved(at, list.columns, row, [...range(row + 1, list.bottom), -1]);
}

/** The texts that put the rows of a list in the order of a column; blanks come last. */
export function sortedBy(at: RowsAt, row: number, col: number, sign: 1 | -1): TypedCell[] {
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

/** The rows from `top` on filled with the cells of other rows; −1 stands for an empty one. */
function moved(
  { book, sheet }: RowsAt,
  columns: readonly Column[],
  top: number,
  order: readonly number[],
): TypedCell[] {
  const textOf = (row: number, col: number) => book.typedText(sheet.name, row, col);
  return order.flatMap((from, i) =>
    columns.flatMap(({ col, formulaAt }) => {
      const row = top + i;
      const source = from < 0 ? formulaAt : from;
      const own = source === undefined ? "" : textOf(source, col);
      const isShifted = source !== undefined && own.startsWith("=");
      const text = isShifted ? shifted(own, { row: source, col }, { row, col }) : own;
      return text === textOf(row, col) ? [] : [{ row, col, text }];
    }),
  );
}

function range(from: number, to: number): number[] {
  return Array.from({ length: Math.max(0, to - from + 1) }, (_, i) => from + i);
}
