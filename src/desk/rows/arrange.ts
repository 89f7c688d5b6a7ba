import { grouped, InputError } from "../../cells";
import type { TypedCell } from "../host";
import { carried, followed, type RowMove } from "../text/followed";
import { pattern, shifted } from "../text/shift";
import { headRow, isFormula, type RowsAt } from "./typed-cells";

/**
 * The cells of a list that move with its rows. A column of one formula, the same in every row, stays
 * where it is; of any other column all cells move.
 */
interface List {
  readonly top: number;
  readonly bottom: number;
  readonly columns: readonly Column[];
}

interface Column {
  readonly col: number;
  /** A row with the formula that most rows have; undefined where all are typed. */
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
    const formulas = rows.filter((each) => isFormula(at, each, col));
    const alike = mostAlike(at, formulas, col);
    const isTyped = (each: number) =>
      book.value(sheet.name, each, col) !== null && !isFormula(at, each, col);
    if (alike.length < formulas.length || alike.length === 0 || rows.some(isTyped))
      columns.push({ col, formulaAt: alike[0] });
  }
  const isFilled = (each: number) =>
    columns.some(
      ({ col, formulaAt }) => formulaAt === undefined && book.value(sheet.name, each, col) !== null,
    );
  while (bottom > top && !isFilled(bottom)) bottom--;
  return { top, bottom, columns };
}

/** Of rows with a formula in a column those whose formulas say the same, each of its own row. */
function mostAlike(
  { book, sheet }: RowsAt,
  rows: readonly number[],
  col: number,
): readonly number[] {
  const said = grouped(rows, (row) =>
    book
      .typedText(sheet.name, row, col)
      .replace(/\d+/g, (digits) => (Number(digits) === row + 1 ? "#" : digits)),
  );
  if (said.size < 2) return rows;
  const moved = grouped(rows, (row) => pattern(book.typedText(sheet.name, row, col), { row, col }));
  return [...moved.values()].reduce((most, each) => (each.length > most.length ? each : most));
}

interface Moved {
  readonly cells: TypedCell[];
  readonly move: RowMove;
}

/** The texts that put an empty row at `row`: every typed cell from there on moves down by one. */
export function openedAt(at: RowsAt, row: number): Moved {
  const list = listAround(at, row);
  return movedBy(at, list, row, 1, [-1, ...range(row, list.bottom)]);
}

/** The texts that take a row out: every typed cell below it moves up by one. */
export function closedAt(at: RowsAt, row: number): Moved {
  const list = listAround(at, row);
  return movedBy(at, list, row, -1, [...range(row + 1, list.bottom), -1]);
}

function movedBy(at: RowsAt, list: List, row: number, by: 1 | -1, order: readonly number[]): Moved {
  const { top, bottom, columns } = list;
  const right = at.extent.usedCols - 1;
  const move = { sheet: at.sheet.name, row, by, top, bottom, left: 0, right };
  const rows = range(row, row + order.length - 1);
  return { move, cells: moved(at, columns, rows, order, move) };
}

/**
 * The texts that put the rows around a row, up to blank ones, in the order of a column; blanks come
 * last. A row that sums others stays where it is.
 */
export function sortedBy(at: RowsAt, row: number, col: number, sign: 1 | -1): TypedCell[] {
  const { book, sheet } = at;
  const { columns, ...list } = listAround(at, row);
  let { top, bottom } = { top: row, bottom: row };
  while (top > list.top && !isBlank(at, top - 1)) top--;
  while (bottom < list.bottom && !isBlank(at, bottom + 1)) bottom++;
  const rows = range(top, bottom).filter((each) => !sumsRows(at, columns, each));
  const values = new Map(rows.map((each) => [each, book.value(sheet.name, each, col)]));
  const order = [...rows].sort((a, b) => {
    const [x, y] = [values.get(a) ?? null, values.get(b) ?? null];
    if (x === null || y === null) return Number(x === null) - Number(y === null) || a - b;
    return sign * compare(x, y) || a - b;
  });
  return moved(at, columns, rows, order);
}

function isBlank({ book, sheet, extent }: RowsAt, row: number): boolean {
  return range(0, extent.usedCols - 1).every((col) => book.value(sheet.name, row, col) === null);
}

/** Whether a formula of a row that would go along with it reads rows above one another. */
function sumsRows({ book, sheet }: RowsAt, columns: readonly Column[], row: number): boolean {
  return columns.some(({ col }) => {
    const text = book.typedText(sheet.name, row, col);
    const spans = text.startsWith("=") ? text.matchAll(/[A-Z]{1,3}(\d+):\$?[A-Z]{1,3}(\d+)/g) : [];
    return [...spans].some(([, from, to]) => from !== to);
  });
}

function compare(x: unknown, y: unknown): number {
  if (typeof x === "number" && typeof y === "number") return x - y;
  if (typeof x === "number" || typeof y === "number") return typeof x === "number" ? -1 : 1;
  return String(x).localeCompare(String(y), undefined, { numeric: true, sensitivity: "base" });
}

/**
 * Rows filled with the cells of other rows; −1 stands for an empty one. Formulas are
 * those of their new row; where a row is put in or taken out, they still read what they read.
 */
function moved(
  { book, sheet }: RowsAt,
  columns: readonly Column[],
  rows: readonly number[],
  order: readonly number[],
  move?: RowMove,
): TypedCell[] {
  const textOf = (row: number, col: number) => book.typedText(sheet.name, row, col);
  return order.flatMap((from, i) =>
    columns.flatMap(({ col, formulaAt }) => {
      const row = rows[i] as number;
      const source = from < 0 ? formulaAt : from;
      const own = source === undefined ? "" : textOf(source, col);
      if (source === undefined || !own.startsWith("="))
        return own === textOf(row, col) ? [] : [{ row, col, text: own }];
      const here = shifted(own, { row: source, col }, { row, col });
      const withMove =
        move && (from >= 0 ? carried(own, move) : followed(here, { sheet: sheet.name, row }, move));
      const text = withMove ?? here;
      return text === textOf(row, col) ? [] : [{ row, col, text }];
    }),
  );
}

function range(from: number, to: number): number[] {
  return Array.from({ length: Math.max(0, to - from + 1) }, (_, i) => from + i);
}
