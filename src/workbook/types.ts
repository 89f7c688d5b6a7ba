/**
 * The shapes this room hands out and takes in. Rows and columns are 0-based
 * everywhere in the API; references such as "B2" appear only as text.
 */

import type { CellValue, Copied } from "../cells";
import type { Arrangement, ConditionalFormat, PageSpec, Validation } from "./arrange/spec";
import type { ChartSpec } from "./chart/spec";

export interface Cell {
  readonly row: number;
  readonly col: number;
  /** The stored (cached) value. Dates are serial numbers; the format code tells. */
  readonly value: CellValue;
  /** Without the leading "=", as stored in the file; shared formulas are expanded to this cell's own text. */
  readonly formula: string | null;
  /** "B2:B9" when this cell anchors an array formula or a spilled formula. */
  readonly arrayRef: string | null;
  /** Index of the cell format (xf) in the styles part. */
  readonly style: number;
}

/** What a cell holds, as `Cell` has it; a formula copied down a column comes as what it is a copy of. */
export type CellVisitor = (
  row: number,
  col: number,
  value: CellValue,
  formula: string | Copied | null,
  arrayRef: string | null,
  isFixedArray?: boolean,
) => void;

export type SheetState = "visible" | "hidden" | "veryHidden";

export interface Sheet {
  readonly name: string;
  readonly state: SheetState;
  readonly isProtected: boolean;
  /** Last row that holds a value or formula, plus one. */
  readonly rowCount: number;
  /** Last column that holds a value or formula, plus one. */
  readonly colCount: number;
  cell(row: number, col: number): Cell | undefined;
  /** Row by row, left to right. */
  cells(): Iterable<Cell>;
  /** Calls `see` for every cell with a value or formula, in the order of `cells`, without an object for each. */
  visit(see: CellVisitor): void;
  readonly hiddenRows: ReadonlySet<number>;
  readonly hiddenCols: ReadonlySet<number>;
  isHiddenRow(row: number): boolean;
  isHiddenCol(col: number): boolean;
  /** The code of a cell's number format: under "@" what is typed there becomes a text. */
  numberFormat(row: number, col: number): string;
  /** Whether a cell's text has the colour of its ground. Conditional formats are not looked at. */
  isUnseen(row: number, col: number): boolean;
  readonly merges: readonly string[];
  /** Column widths in characters, for columns that state one. */
  readonly columnWidths: ReadonlyMap<number, number>;
  readonly frozenRows: number;
  readonly frozenCols: number;
  /** Rows are left out of view by a filter. */
  readonly isFiltered: boolean;
  /** Stores a value, removes the cell's formula and keeps its style. */
  setValue(row: number, col: number, value: CellValue): void;
  /**
   * Stores a formula (without "=") and its value; keeps the cell's style. The same formula text again only renews
   * the value. `arrayRef` makes it a spilled formula over that range, or gives a spilled formula its new range.
   */
  setFormula(row: number, col: number, formula: string, value: CellValue, arrayRef?: string): void;
  /** Removes value and formula; the cell's style stays. */
  clear(row: number, col: number): void;
  /** Gives a cell another format (an index in the styles part); value and formula stay. */
  setStyle(row: number, col: number, style: number): void;
  /** Those by formula or by value, the one that counts first before others. */
  readonly conditionalFormats: readonly ConditionalFormat[];
  readonly validations: readonly Validation[];
  /** Changes what stands around the cells. Throws a RangeError for what a sheet cannot have. */
  arrange(changes: Arrangement): void;
  /** The names of its charts. */
  readonly charts: readonly string[];
  /** Adds a chart over cells of the sheet and gives its name. The values are those stored now. */
  addChart(chart: ChartSpec): string;
  removeChart(name: string): void;
}

export interface DefinedName {
  readonly name: string;
  readonly formula: string;
  /** The sheet the name is local to, or null for the whole workbook. */
  readonly sheet: string | null;
  readonly comment?: string;
}

export interface TableInfo {
  readonly name: string;
  readonly sheet: string;
  readonly ref: string;
  readonly columns: readonly string[];
  readonly headerRow: boolean;
  readonly totalsRow: boolean;
}

export type EdgeStyle = "hair" | "thin" | "medium" | "thick" | "dotted" | "dashed" | "double";

/** Lines on the sides of a cell, all in one colour ("RRGGBB"). */
export interface Edges {
  readonly left?: EdgeStyle | undefined;
  readonly right?: EdgeStyle | undefined;
  readonly top?: EdgeStyle | undefined;
  readonly bottom?: EdgeStyle | undefined;
  readonly color?: string | undefined;
}

export interface StyleSpec {
  readonly bold?: boolean | undefined;
  readonly italic?: boolean | undefined;
  /** Solid fill, "RRGGBB". */
  readonly fill?: string | undefined;
  /** Text colour, "RRGGBB". */
  readonly color?: string | undefined;
  /** A format code such as "0.0" or "yyyy-mm-dd". */
  readonly numberFormat?: string | undefined;
  /** Height of the letters in points. */
  readonly size?: number | undefined;
  readonly wrap?: boolean | undefined;
  readonly align?: "left" | "center" | "right" | undefined;
  readonly valign?: "top" | "center" | "bottom" | undefined;
  /** A thin border on all four sides. */
  readonly border?: boolean | undefined;
  /** Lines on single sides. */
  readonly edges?: Edges | undefined;
  /** Can be changed while its sheet is protected. */
  readonly unlocked?: boolean | undefined;
}

export interface CellSpec {
  readonly value?: CellValue | undefined;
  /** Without the leading "=". */
  readonly formula?: string | undefined;
  /** Given for a formula that spills: the range it fills, this cell first. */
  readonly arrayRef?: string | undefined;
  readonly style?: number | undefined;
}

export interface ValidationSpec {
  readonly ref: string;
  /** Allowed entries, or a formula that yields them. */
  readonly list?: readonly string[] | undefined;
  readonly formula?: string | undefined;
}

export interface SheetSpec {
  readonly rows: readonly (readonly (CellSpec | null)[])[];
  /** Widths in characters, by column from the left; null leaves the default. */
  readonly columnWidths?: readonly (number | null)[] | undefined;
  readonly frozenRows?: number | undefined;
  readonly frozenCols?: number | undefined;
  /** The range that carries filter buttons, "A1:F20". */
  readonly autoFilter?: string | undefined;
  readonly validations?: readonly ValidationSpec[] | undefined;
  /** In points, by row from the top; null leaves the default. */
  readonly rowHeights?: readonly (number | null)[] | undefined;
  /** Merged ranges, "A1:D1". */
  readonly merges?: readonly string[] | undefined;
  readonly page?: PageSpec | undefined;
  readonly conditionalFormats?: readonly ConditionalFormat[] | undefined;
  readonly charts?: readonly ChartSpec[] | undefined;
  /** "RRGGBB". */
  readonly tabColor?: string | undefined;
  readonly state?: SheetState | undefined;
}

/** Bounds that a hostile or broken file may not pass. */
export interface Limits {
  /** Bytes of the file itself. */
  readonly fileBytes: number;
  /** Entries in the zip. */
  readonly entries: number;
  /** Bytes of all parts once inflated, counted while they inflate. */
  readonly expandedBytes: number;
  /** Nesting of XML elements. */
  readonly depth: number;
  /** Cells in the whole workbook. */
  readonly cells: number;
  /** Characters of text in the cells of the whole workbook, each time a text stands in one. */
  readonly text: number;
  /** Bytes of XML beside plain cells: what stands around them, texts, formats, names. */
  readonly markup: number;
}

export type WorkbookErrorReason =
  | "not-xlsx"
  | "old-xls"
  | "password"
  | "truncated"
  | "damaged"
  | "too-large"
  | "no-sheets";

/** Faster code of the host's own for what opening a package costs most. */
export interface HostZip {
  /** Inflates raw deflate data; gives at most `size` bytes and throws where there would be more. */
  inflate(packed: Uint8Array, size: number): Uint8Array;
  /** The CRC-32 checksum of zip entries, as an unsigned number. */
  crc32(bytes: Uint8Array): number;
}
