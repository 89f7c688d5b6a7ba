import { type CellValue, isBlankCell, kept } from "../../cells";
import type { SheetLayout } from "../columns";
import type { SheetFit } from "../fit";
import { type Grid, hasFormula } from "../grid";

/** Where a value stands: sheet, row and column, from 0. */
export interface Place {
  readonly grid: Grid;
  readonly row: number;
  readonly col: number;
}

/** Rows or columns of cells: one number where all readings share it, −1 where a reading has none. */
export type Along = number | ArrayLike<number>;

/** The cells of one field: those of a column, of a row, or scattered over cards. */
export interface Line {
  /** What stands over the cells; "" where nothing does. */
  readonly heading: string;
  /** Unit of the cells; undefined means the job's own. */
  readonly unit?: string | undefined;
  readonly rows: Along;
  readonly cols: Along;
  /** What a reader made of the stored values, where the cell alone does not say it. */
  readonly values?: readonly CellValue[];
}

/** Readings that stand together on a sheet, whatever way they run. */
export interface Block {
  readonly grid: Grid;
  readonly length: number;
  /** By field. */
  readonly lines: ReadonlyMap<string, Line>;
  /** Where each reading stands as a whole: a cell that its name or its own row gives. */
  readonly home: Pick<Line, "rows" | "cols">;
  /** Whether each reading has a row of its own, so that the row alone tells which it is. */
  readonly isRowwise: boolean;
}

/** The row or column of a reading. */
export function along(cells: Along, i: number): number {
  return typeof cells === "number" ? cells : (cells[i] as number);
}

/** The block that holds a reading, by the number of the first of each. */
export function blockOf(starts: readonly number[], i: number): number {
  let low = 0;
  let high = starts.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((starts[middle] as number) <= i) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** The filled rows below a sheet's headings: one reading a row. */
export function rowBlock(grid: Grid, fit: SheetFit, layout: SheetLayout): Block {
  const rows = filledRows(grid, fit, layout);
  const lines = new Map<string, Line>();
  for (const [key, { col, heading, unit }] of fit.columns)
    lines.set(key, { heading, unit, rows, cols: col });
  return { grid, length: rows.length, lines, home: { rows, cols: 0 }, isRowwise: true };
}

/** Some of the readings of a block. */
export function partOfBlock(block: Block, own: readonly number[]): Block {
  const known = new Map<Along, Along>();
  const pick = (cells: Along): Along =>
    typeof cells === "number"
      ? cells
      : kept(known, cells, () => own.map((i) => cells[i] as number));
  const picked = <T extends Pick<Line, "rows" | "cols">>(line: T): T => {
    return { ...line, rows: pick(line.rows), cols: pick(line.cols) };
  };
  const lines = new Map([...block.lines].map(([key, line]) => [key, picked(line)]));
  return { ...block, length: own.length, lines, home: picked(block.home) };
}

/** Rows below the headings in which a person has written something; totals are not rows. */
function filledRows(grid: Grid, fit: SheetFit, layout: SheetLayout): number[] {
  const isFilled = filledIn(grid, fit, layout);
  const rows: number[] = [];
  for (let row = fit.headerRow + 1; row < grid.rowCount; row++) if (isFilled(row)) rows.push(row);
  return rows;
}

/** Whether a row below the headings is one of `filledRows`. */
export function filledIn(grid: Grid, fit: SheetFit, layout: SheetLayout): (row: number) => boolean {
  const fitted = layout.fields
    .flatMap((field) => {
      const column = fit.columns.get(field.key);
      return column ? [{ col: column.col, computed: field.is !== undefined }] : [];
    })
    .sort((a, b) => a.col - b.col);
  const isTyped = (row: number) =>
    fitted.some(({ col, computed }) => {
      const value = grid.value(row, col);
      return !isBlankCell(value) && !(computed && hasFormula(grid, row, col));
    });
  const isTotal = (row: number) => {
    const first = fitted.find(({ col }) => !isBlankCell(grid.value(row, col)));
    const value = first && grid.value(row, first.col);
    return typeof value === "string" && /^\s*(total|sum|average|mean|count)s?\b/i.test(value);
  };
  return (row) => isTyped(row) && !isTotal(row);
}
