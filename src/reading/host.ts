/** What a reader needs to know of a workbook. `src/job`'s grids will do as they are. */
export type ReadValue =
  | number
  | string
  | boolean
  | { readonly error: string; readonly message?: string }
  | null;

/** One sheet. Rows and columns count from 0; dates are serial numbers. */
export interface ReadGrid {
  readonly name: string;
  readonly rowCount: number;
  readonly colCount: number;
  value(row: number, col: number): ReadValue;
  /** The formula without "=", or null. */
  formula(row: number, col: number): string | null;
  readonly hasFormula?: (row: number, col: number) => boolean;
  /** The same as `value` for these rows of a column in one go. */
  readonly column?: (col: number, rows: readonly number[]) => ReadValue[];
  /** The same object for formulas known to be copies of each other. */
  readonly copyOf?: (row: number, col: number) => object | null;
  readonly hiddenRow?: (row: number) => boolean;
  /** Merged areas as rectangles, both ends included. */
  readonly merges?: readonly MergedArea[];
  /** Whether the number format of the cell is that of a date, where the host can tell. */
  readonly isDate?: (row: number, col: number) => boolean;
}

export interface MergedArea {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

/** A name of the workbook and what it stands for, without "=". */
export interface ReadName {
  readonly name: string;
  readonly formula: string;
}

/** A table of the workbook, for formulas that name its columns. */
export interface ReadTable extends MergedArea {
  readonly name: string;
  readonly sheet: string;
  readonly columns: readonly string[];
}

export interface ReadWorkbook {
  readonly sheets: readonly ReadGrid[];
  readonly names?: readonly ReadName[];
  readonly tables?: readonly ReadTable[];
}
