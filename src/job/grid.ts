import type { CellValue } from "../cells";

/** One sheet as the job reads it. Rows and columns count from 0. */
export interface Grid {
  readonly name: string;
  readonly rowCount: number;
  readonly colCount: number;
  /** The first cell that stands so far beyond these rows and columns that it was left out. */
  readonly beyond?: { readonly row: number; readonly col: number } | null;
  value(row: number, col: number): CellValue;
  /** The formula without "=", or null. */
  formula(row: number, col: number): string | null;
  /** Whether the cell holds a formula: quicker than its text, where the host can tell. */
  readonly hasFormula?: (row: number, col: number) => boolean;
  /** The same as `value` for these rows of a column in one go, where the host can. */
  readonly column?: (col: number, rows: readonly number[]) => CellValue[];
  /** The same object for formulas known to be copies of each other; null where nothing is known. */
  readonly copyOf?: (row: number, col: number) => object | null;
  /** Whether a row or column is hidden; left out where the host does not tell. */
  readonly hiddenRow?: (row: number) => boolean;
  readonly hiddenCol?: (col: number) => boolean;
  /** Whether a cell is formatted as text, so that a formula typed there stays text. */
  readonly isTextFormat?: (row: number, col: number) => boolean;
}

/** What a fresh evaluation of one formula cell gave, from the stored values it points at. */
export type Fresh = { readonly value: CellValue } | { readonly unsupported: string };

/** A workbook as the job reads it. */
export interface JobFile {
  readonly sheets: readonly Grid[];
  /** Days by which serial numbers lag behind the usual ones, where the workbook counts from 1904. */
  readonly dateOffset?: number;
  /** Evaluates a formula cell afresh, where the host can. Excel itself keeps cells fresh. */
  readonly fresh?: (sheet: string, row: number, col: number) => Fresh;
}

export function hasFormula(grid: Grid, row: number, col: number): boolean {
  return grid.hasFormula ? grid.hasFormula(row, col) : grid.formula(row, col) !== null;
}
