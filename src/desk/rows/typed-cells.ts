import { entryUnder } from "../../job";
import type { Extent } from "../extent";
import type { SheetInfo, WorkbookHost } from "../host";

/** What the look along the rows of a list needs. */
export interface RowsAt {
  readonly book: WorkbookHost;
  readonly sheet: SheetInfo;
  readonly extent: Extent;
}

interface Spot {
  readonly row: number;
  readonly col: number;
}

/** How far the headings of a list are looked for above its rows. */
const mostHeadRows = 20;

/** Whether what stands there is a formula. */
export function isFormula({ book, sheet }: RowsAt, row: number, col: number): boolean {
  return row >= 0 && book.typedText(sheet.name, row, col).startsWith("=");
}

/** Whether a cell is worked out: by a formula of its own, or, while blank, by that of the row above. */
function isWorkedOut(at: RowsAt, row: number, col: number): boolean {
  if (isFormula(at, row, col)) return true;
  return at.book.value(at.sheet.name, row, col) === null && isFormula(at, row - 1, col);
}

/**
 * The row of headings above a row: the last frozen one, else the nearest above of which more cells
 * are texts than numbers or formulas. −1 where there is none.
 */
export function headRow(at: RowsAt, row: number): number {
  const { book, sheet, extent } = at;
  if (sheet.frozenRows > 0 && row >= sheet.frozenRows) return sheet.frozenRows - 1;
  for (let above = row - 1; above >= Math.max(0, row - mostHeadRows); above--) {
    let texts = 0;
    let others = 0;
    for (let col = 0; col < extent.usedCols; col++) {
      const value = book.value(sheet.name, above, col);
      if (value === null) continue;
      if (typeof value === "string" && !isFormula(at, above, col)) texts++;
      else others++;
    }
    if (texts >= 3 && others === 0) return above;
  }
  return -1;
}

/** The columns of the list that a row belongs to, in which a person types; none without headings. */
export function typedColumns(at: RowsAt, row: number): number[] {
  const head = headRow(at, row);
  if (head < 0 || head >= row) return [];
  const columns: number[] = [];
  for (let col = 0; col < at.extent.usedCols; col++) {
    if (!at.extent.isShown(row, col)) continue;
    if (at.book.value(at.sheet.name, head, col) === null) continue;
    if (!isWorkedOut(at, row, col)) columns.push(col);
  }
  return columns;
}

/**
 * The next typed cell of a row below one in which something was typed; in the first row of a list
 * one that is typed in most rows. What rows repeat, and stands there already, is passed over.
 */
export function nextAsAbove(at: RowsAt, { row, col }: Spot): Spot | undefined {
  const { book, sheet } = at;
  const head = headRow(at, row);
  const next = typedColumns(at, row).find((each) => {
    const entry = entryUnder(sheet.name, book.value(sheet.name, head, each));
    if (each <= col || (entry === "repeated" && book.value(sheet.name, row, each) !== null))
      return false;
    return row - 1 === head ? entry !== "seldom" : book.value(sheet.name, row - 1, each) !== null;
  });
  return next === undefined ? undefined : { row, col: next };
}

/**
 * The typed cell before or after another in the rows of its list; past the end of a row the first
 * of the next one. Outside a list the cell beside it.
 */
export function nextTyped(at: RowsAt, { row, col }: Spot, sign: 1 | -1): Spot {
  const { extent } = at;
  const columns = typedColumns(at, row);
  if (columns.length === 0) return { row, col: extent.colFrom(col, sign) };
  const further = columns.filter((each) => (sign > 0 ? each > col : each < col));
  const beside = sign > 0 ? further[0] : further.at(-1);
  if (beside !== undefined) return { row, col: beside };
  const other = extent.rowFrom(row, sign);
  if (other === row) return { row, col };
  const there = typedColumns(at, other);
  return { row: other, col: (sign > 0 ? there[0] : there.at(-1)) ?? col };
}
