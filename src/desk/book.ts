import type { CellValue, Place } from "../cells";
import type { CellLook } from "./look/cell-look";

/** A text as if typed into one cell. */
export interface CellText {
  readonly row: number;
  readonly col: number;
  readonly text: string;
}

/** What the page needs to know of a sheet before it looks at a cell. */
export interface SheetFacts {
  readonly name: string;
  /** Rows and columns in use. */
  readonly rowCount: number;
  readonly colCount: number;
  readonly frozenRows: number;
  readonly frozenCols: number;
  readonly hiddenRows: ReadonlySet<number>;
  readonly hiddenCols: ReadonlySet<number>;
  readonly hasMerges: boolean;
  readonly isProtected: boolean;
  /** Width in characters. */
  width(col: number): number;
}

/** What a mark of the sheet check adds to a cell; it lies over the cell's own look. */
export interface CellMark {
  /** "#RRGGBB" */
  readonly fill: string | null;
  /** "#RRGGBB" */
  readonly color: string | null;
  readonly bold: boolean;
}

/** What of the open workbook is another than before. */
export interface BookChange {
  readonly kind: "cells" | "looks" | "layout" | "sheets" | "opened";
  /** Cells that were written, for a step that was undone or redone. */
  readonly at?: Place | undefined;
}

/**
 * The open workbook as the grid and the bars around it use it. Rows and columns are 0-based. What
 * the workbook refuses is thrown as an Error whose message names the cell and the mend.
 */
export interface Book {
  readonly fileName: string;
  readonly isDirty: boolean;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  /** The sheets that are in view, in the order of their tabs. */
  sheets(): readonly SheetFacts[];
  value(sheet: string, row: number, col: number): CellValue;
  /** As the cell's number format shows it. */
  shown(sheet: string, row: number, col: number): string;
  /** What editing starts from: the formula as a user types it, or the value with all its digits. */
  content(sheet: string, row: number, col: number): string;
  look(sheet: string, row: number, col: number): CellLook;
  mark(sheet: string, row: number, col: number): CellMark | null;
  /** The entries a drop-down list offers for a cell, or null. */
  choices(sheet: string, row: number, col: number): readonly string[] | null;
  /**
   * Takes texts as if typed into cells; one step to undo. A new row looks as the one above it. Where
   * it lengthens a list, ranges that ended with the row above take it in.
   */
  enter(sheet: string, cells: readonly CellText[], newRow?: number, isInserted?: boolean): void;
  /** Sets the width of a column, in characters. */
  widen(sheet: string, col: number, width: number): void;
  /** Empties cells; one step to undo. */
  clear(area: Place): void;
  undo(): void;
  redo(): void;
  readonly selection: Place;
  select(area: Place): void;
  /** While a cell is being edited, the pane's requests wait. */
  beginEdit(): void;
  endEdit(): void;
  /** The file with all edits in it. Afterwards the book is not dirty. */
  save(): Uint8Array;
  onChange(listener: (change: BookChange) => void): () => void;
  onSelect(listener: (area: Place) => void): () => void;
}
