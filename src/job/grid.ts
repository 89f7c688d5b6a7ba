import type { CellValue, Place } from "../cells";
import type { Answers, ReadGrid, ReadWorkbook, WorkbookReading } from "../reading";

/** One sheet as the job reads it. Rows and columns count from 0. */
export interface Grid extends ReadGrid {
  /** The first cell that stands so far beyond these rows and columns that it was left out. */
  readonly beyond?: { readonly row: number; readonly col: number } | null;
  /** How well the sheet itself is hidden; left out where it is in view or the host does not tell. */
  readonly hiddenSheet?: "hidden" | "veryHidden" | undefined;
  /** Whether a column is hidden; left out where the host does not tell. */
  readonly hiddenCol?: (col: number) => boolean;
  /** Whether a cell's text has the colour of its ground, where the host can tell. */
  readonly isUnseen?: (row: number, col: number) => boolean;
}

/** What a formula gives from the values as stored, or what in it is not evaluated. */
export type Fresh = { readonly value: CellValue } | { readonly unsupported: string };

/** Works formulas out from the stored values of the cells they read. */
export interface Calculator {
  /** The formula that makes a cell's value, or the cell's own value where none does. */
  recompute(sheet: string, row: number, col: number): Fresh;
  /** Whether there is no work left for `recompute`: formulas then keep their stored values. */
  readonly isSpent: boolean;
  /** A formula as if it stood in a cell. */
  evaluate(formula: string, sheet: string, row: number, col: number): Fresh;
  /** What the formula of a cell reads. */
  precedents(sheet: string, row: number, col: number): readonly Place[];
  /** Whether all in a formula is known to give here what a spreadsheet program gives. */
  isKnownToAgree(formula: string): boolean;
  /** Itself, for the same workbook after an edit of these cells alone. */
  again?(file: JobFile, cells: readonly Place[]): Calculator;
}

/**
 * A user's own answer: this heading stands for this field ("" for none); with no heading, the sheet
 * holds fans or ("") none; with a word, what the word means in this field, whatever the sheet.
 */
export interface FitChoice {
  /** "" for any sheet. */
  readonly sheet: string;
  readonly heading: string;
  /** Key of a field, "fans" for a sheet as a whole. */
  readonly field: string;
  readonly word?: string;
  readonly means?: string;
}

/** A workbook as the job reads it. */
export interface JobFile extends ReadWorkbook {
  readonly sheets: readonly Grid[];
  /** Days by which serial numbers lag behind the usual ones, where the workbook counts from 1904. */
  readonly dateOffset?: number;
  /** Left out where nothing is worked out again, as in the older of two states. */
  readonly calculator?: Calculator;
  /** Recognises sheets that a firm laid out itself; left out where only our own form is read. */
  readonly recognise?: (file: ReadWorkbook, answers: Answers) => WorkbookReading;
  /** A firm's answers on how to read its workbooks; those that the workbook keeps go before them. */
  readonly answers?: readonly FitChoice[];
  /** What is told of how the file came to be read. */
  readonly said?: readonly string[];
}

export function hasFormula(grid: Grid, row: number, col: number): boolean {
  return grid.hasFormula ? grid.hasFormula(row, col) : grid.formula(row, col) !== null;
}
