import type { CellValue, Copied, Rectangle } from "../cells";

/** One sheet as a reader needs it. Rows and columns count from 0; dates are serial numbers. */
export interface ReadGrid {
  readonly name: string;
  readonly rowCount: number;
  readonly colCount: number;
  value(row: number, col: number): CellValue;
  /** The formula without "=", or null. */
  formula(row: number, col: number): string | null;
  /** Whether the cell holds a formula: quicker than its text, where the host can tell. */
  readonly hasFormula?: (row: number, col: number) => boolean;
  /** The same as `value` for these rows of a column in one go. */
  readonly column?: (col: number, rows: readonly number[]) => CellValue[];
  /** The same object for formulas known to be copies of each other; null where nothing is known. */
  readonly copyOf?: (row: number, col: number) => Copied | null;
  /** Whether a row is hidden; left out where the host does not tell. */
  readonly hiddenRow?: (row: number) => boolean;
  readonly merges?: readonly Rectangle[];
  /** The code of a cell's number format: under "@" a formula typed there stays text; undefined where it is not known. */
  readonly numberFormat?: (row: number, col: number) => string | undefined;
}

/** A name of the workbook and what it stands for, without "=". */
export interface ReadName {
  readonly name: string;
  readonly formula: string;
}

/** A table of the workbook, for formulas that name its columns. */
export interface ReadTable extends Rectangle {
  readonly name: string;
  readonly sheet: string;
  readonly columns: readonly string[];
}

export interface ReadWorkbook {
  readonly sheets: readonly ReadGrid[];
  readonly names?: readonly ReadName[];
  readonly tables?: readonly ReadTable[];
}
