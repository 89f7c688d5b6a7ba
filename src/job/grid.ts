import type { CellValue } from "../cells";
import type { Choice, ReadGrid, ReadWorkbook, WorkbookReading } from "../reading";

/** One sheet as the job reads it. Rows and columns count from 0. */
export interface Grid extends ReadGrid {
  /** The first cell that stands so far beyond these rows and columns that it was left out. */
  readonly beyond?: { readonly row: number; readonly col: number } | null;
  /** How well the sheet itself is hidden; left out where it is in view or the host does not tell. */
  readonly hiddenSheet?: "hidden" | "veryHidden" | undefined;
  /** Whether a column is hidden; left out where the host does not tell. */
  readonly hiddenCol?: (col: number) => boolean;
  /** Whether a cell is formatted as text, so that a formula typed there stays text. */
  readonly isTextFormat?: (row: number, col: number) => boolean;
}

/** What a fresh evaluation of one formula cell gave, from the stored values it points at. */
export type Fresh = { readonly value: CellValue } | { readonly unsupported: string };

/** A workbook as the job reads it. */
export interface JobFile extends ReadWorkbook {
  readonly sheets: readonly Grid[];
  /** Days by which serial numbers lag behind the usual ones, where the workbook counts from 1904. */
  readonly dateOffset?: number;
  /** Evaluates a formula cell afresh, where the host can. Excel itself keeps cells fresh. */
  readonly fresh?: (sheet: string, row: number, col: number) => Fresh;
  /** Recognises sheets that a firm laid out itself; left out where only our own form is read. */
  readonly recognise?: (file: ReadWorkbook, choices: readonly Choice[]) => WorkbookReading;
  /** Whether all in a formula is known to give afresh what a spreadsheet program gives. */
  readonly isKnownToAgree?: (formula: string) => boolean;
}

export function hasFormula(grid: Grid, row: number, col: number): boolean {
  return grid.hasFormula ? grid.hasFormula(row, col) : grid.formula(row, col) !== null;
}
