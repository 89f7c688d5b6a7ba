/** How a sheet is laid out around its cells, as it is handed in and read. */

/** Colours as "RRGGBB"; what is left out stays as the cell's own format has it. */
export interface ConditionalLook {
  readonly fill?: string | undefined;
  readonly color?: string | undefined;
  readonly bold?: boolean | undefined;
  readonly italic?: boolean | undefined;
}

export type ConditionalOperator =
  | "lessThan"
  | "lessThanOrEqual"
  | "equal"
  | "notEqual"
  | "greaterThanOrEqual"
  | "greaterThan"
  | "between"
  | "notBetween";

/** A conditional format by a formula of its own, or (with an operator) by the cell's value. */
export interface ConditionalFormat {
  /** The cells, "A1:A9" or several such with a space between; formulas are written for the first. */
  readonly ref: string;
  /** Null for a rule that is one formula. */
  readonly operator: ConditionalOperator | null;
  /** Without "="; two for between and not between. */
  readonly formulas: readonly string[];
  readonly stopIfTrue: boolean;
  readonly look: ConditionalLook;
  /** Index of the look in the styles part, which may say more than `look`; it goes before `look`. */
  readonly dxfId?: number | undefined;
}

/** A rule for what may be entered in some cells, of any type. */
export interface Validation {
  /** The cells, "A1:A9" or several such with a space between. */
  readonly ref: string;
  /** "list", "whole", "date" and so on, as the format names them. */
  readonly type: string;
  /** Without "="; a list of entries stands in quotes: "a,b". */
  readonly formula: string;
  readonly formula2?: string | undefined;
  /** What else the rule says: messages, operator, whether blanks are allowed. */
  readonly attributes?: Readonly<Record<string, string>> | undefined;
}

/** Texts in the codes of the format: &P page, &N number of pages, && for an ampersand. */
export interface HeaderText {
  readonly left?: string | undefined;
  readonly center?: string | undefined;
  readonly right?: string | undefined;
}

/** How a sheet is printed. What is left out stays as it is. */
export interface PageSpec {
  readonly paper?: "a4" | "letter" | undefined;
  readonly landscape?: boolean | undefined;
  /** Shrinks the print to this many pages across. */
  readonly pagesWide?: number | undefined;
  /** And to this many down; left out, it may be any number. */
  readonly pagesTall?: number | undefined;
  /** In inches. */
  readonly margins?: Margins | undefined;
  readonly centered?: boolean | undefined;
  readonly header?: HeaderText | undefined;
  readonly footer?: HeaderText | undefined;
  /** Rows that are repeated on every page: first and last, from 0. */
  readonly titleRows?: readonly [number, number] | undefined;
  /** Columns that are repeated, first and last, from 0. */
  readonly titleCols?: readonly [number, number] | undefined;
  /** The cells that are printed, "A1:F40". */
  readonly area?: string | undefined;
  /** Rows, from 0, that start a new page. */
  readonly breaksBefore?: readonly number[] | undefined;
}

export interface Margins {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly header: number;
  readonly footer: number;
}

/** Changes around the cells of a sheet; what is left out stays as it is. Rows and columns from 0. */
export interface Arrangement {
  /** In characters; null for the standard width. */
  readonly widths?: ReadonlyMap<number, number | null> | undefined;
  readonly hiddenCols?: ReadonlyMap<number, boolean> | undefined;
  /** In points; null for a height that follows the content. */
  readonly heights?: ReadonlyMap<number, number | null> | undefined;
  readonly hiddenRows?: ReadonlyMap<number, boolean> | undefined;
  readonly frozen?: { readonly rows: number; readonly cols: number } | undefined;
  /** "RRGGBB"; null for none. */
  readonly tabColor?: string | null | undefined;
  /** All merged ranges from now on. */
  readonly merges?: readonly string[] | undefined;
  /**
   * All conditional formats from now on, the one that counts first before others. An object that
   * the sheet gave out stays in the file as it stands; colour scales and other kinds stay as well.
   */
  readonly conditionalFormats?: readonly ConditionalFormat[] | undefined;
  /** All validations from now on; an object that the sheet gave out stays as it stands. */
  readonly validations?: readonly Validation[] | undefined;
  readonly page?: PageSpec | undefined;
}
