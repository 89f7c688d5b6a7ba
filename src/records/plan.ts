/** A sheet to be printed, as plain data: what stands in it, how it looks, how it is printed. */

/** How a cell looks. Colours are "RRGGBB", sizes in points. */
export interface Look {
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly size?: number;
  readonly color?: string;
  readonly fill?: string;
  readonly align?: "left" | "center" | "right";
  /** At the top where it is left out. */
  readonly valign?: "bottom";
  readonly wrap?: boolean;
  /** A number format such as "0.0". */
  readonly format?: string;
  /** A line under the cell, or around it. */
  readonly line?: "under" | "around" | "heavy under";
}

export interface PlanCell {
  readonly value: string | number | null;
  /** Without "=": what the cell works out; `value` is then what it gives. */
  readonly formula?: string;
  readonly look: Look;
}

export interface PlanRow {
  /** From column A on; null leaves a cell bare. */
  readonly cells: readonly (PlanCell | null)[];
  /** In points. */
  readonly height: number;
}

/** What is printed in the margin of every page; {page} and {pages} stand for the numbers. */
export interface PlanMargin {
  readonly left?: string;
  readonly center?: string;
  readonly right?: string;
}

export interface PlanPage {
  readonly paper: "letter" | "a4";
  readonly landscape: boolean;
  /** The whole sheet on one page; left out, only its width is. */
  readonly onePage: boolean;
  /** How many of the first rows are repeated on every page. */
  readonly titleRows: number;
  /** Rows, from 0, that start a new page whether the one before is full or not. */
  readonly breaksBefore?: readonly number[];
  readonly footer: PlanMargin;
  /** The cells that are printed, "A1:L60". */
  readonly area: string;
}

export interface PlanSeries {
  readonly name: string;
  /** Cells of the same sheet. */
  readonly x: string;
  readonly y: string;
  readonly marker: "circle" | "none";
  readonly line: "none" | "solid" | "dash";
  readonly color: string;
}

/** A scatter chart. */
export interface PlanChart {
  readonly title: string;
  /** What it shows, for those who cannot see it. */
  readonly alternative: string;
  readonly over: string;
  readonly series: readonly PlanSeries[];
  readonly x: { readonly title: string; readonly min: number; readonly max: number };
  readonly y: { readonly title: string; readonly min: number; readonly max: number };
}

export interface SheetPlan {
  /** The name wanted; another is taken where a foreign sheet has it. */
  readonly name: string;
  /** What stands in A1. A sheet of that name with the same text there was made from such a plan. */
  readonly mark: string;
  /** Widths in characters. */
  readonly columns: readonly number[];
  readonly rows: readonly PlanRow[];
  readonly merges: readonly string[];
  readonly page: PlanPage;
  readonly chart?: PlanChart;
}
