import { type CellValue, CopiedDown, kept, type Rectangle, rowPattern } from "../cells";
import type { Grid } from "../job";
import { type Shape, type Shapes, unread } from "./formula-shape";

/** What a cell without a formula holds. A code of 0 or more is the id of a formula's shape. */
export const held = { blank: -1, text: -2, number: -3, other: -4 } as const;

/** One column with at least one filled cell. */
export interface ScannedColumn {
  readonly col: number;
  /** By row of the sheet: the id of the formula's shape, or one of `held`. */
  readonly codes: Int32Array;
  filled: number;
  formulas: number;
  numbers: number;
}

/** What a look over a whole sheet gathers. */
export interface SheetScan {
  readonly grid: Grid;
  /** From the left. */
  readonly columns: readonly ScannedColumn[];
  /** Filled cells of each row, texts among them, and whether it is a total. */
  readonly filled: Uint16Array;
  readonly texts: Uint16Array;
  readonly totals: Uint8Array;
  /**
   * The stretch of data that a row belongs to, from 1; 0 for blank rows, headings and totals.
   * A total between two groups does not end their stretch.
   */
  readonly stretch: Int32Array;
}

/**
 * What follows from the cells of a column and the stretches of its sheet alone, so that it is known
 * again after an edit of other columns.
 */
export function ofColumn<T>(make: (scan: SheetScan, column: ScannedColumn) => T) {
  const known = new WeakMap<Int32Array, WeakMap<ScannedColumn, T>>();
  return (scan: SheetScan, column: ScannedColumn): T =>
    kept(
      kept(known, scan.stretch, () => new WeakMap()),
      column,
      () => make(scan, column),
    );
}

const totalLabel = /^\s*((grand |sub)[ -]?)?(total|sum|average|mean|count)s?\b/i;

/** Reads every cell of a sheet once. */
export function scanSheet(grid: Grid, shapes: Shapes): SheetScan {
  const { rowCount } = grid;
  const draft: Draft = {
    columns: [],
    filled: new Uint16Array(rowCount),
    texts: new Uint16Array(rowCount),
    totals: new Uint8Array(rowCount),
  };
  return scanned(draft, grid, Array(rowCount).keys(), shapes);
}

/** The same after an edit of some cells; columns in which none of them stands are the very same. */
export function scanAgain(
  { columns, filled, texts, totals, stretch }: SheetScan,
  grid: Grid,
  cells: readonly Rectangle[],
  shapes: Shapes,
): SheetScan {
  const draft: Draft = {
    columns: [],
    filled: filled.slice(),
    texts: texts.slice(),
    totals: totals.slice(),
  };
  for (const column of columns) {
    const isEdited = cells.some(({ left, right }) => column.col >= left && column.col <= right);
    draft.columns[column.col] = isEdited ? { ...column, codes: column.codes.slice() } : column;
  }
  const rows = new Set<number>();
  for (const { top, bottom } of cells) for (let row = top; row <= bottom; row++) rows.add(row);
  const again = scanned(draft, grid, rows, shapes);
  const isSame = again.stretch.every((number, row) => number === stretch[row]);
  return isSame ? { ...again, stretch } : again;
}

type Draft = Pick<SheetScan, "filled" | "texts" | "totals"> & {
  /** By number; those that are blank so far are not there. */
  readonly columns: ScannedColumn[];
};

/** Reads some rows of a sheet into what is known of the others. */
function scanned(draft: Draft, grid: Grid, rows: Iterable<number>, shapes: Shapes): SheetScan {
  const { filled, texts, totals } = draft;
  const { rowCount, colCount } = grid;
  const readers = Array.from(
    { length: colCount },
    (_, col) => new FormulaReader(grid, col, shapes),
  );
  for (const row of rows) {
    filled[row] = texts[row] = totals[row] = 0;
    for (let col = 0; col < colCount; col++) {
      const shape = (readers[col] as FormulaReader).at(row);
      const value = shape === null ? grid.value(row, col) : null;
      const code = shape === null ? codeOf(value) : shape.id;
      let column = draft.columns[col];
      const before = column?.codes[row] ?? held.blank;
      if (code !== before) {
        column ??= newColumn(col, rowCount);
        draft.columns[col] = column;
        count(column, before, -1);
        count(column, code, 1);
        column.codes[row] = code;
      }
      if (code === held.blank) continue;
      filled[row]++;
      if (shape?.sumsOwnColumn) totals[row] = 1;
      if (code !== held.text) continue;
      texts[row]++;
      if (filled[row] === 1 && totalLabel.test(value as string)) totals[row] = 1;
    }
  }
  const columns = draft.columns.filter((column) => column && column.filled > 0);
  const stretch = stretchesOf(grid, columns, filled, texts, totals);
  return { grid, columns, filled, texts, totals, stretch };
}

function newColumn(col: number, rowCount: number): ScannedColumn {
  const codes = new Int32Array(rowCount).fill(held.blank);
  return { col, codes, filled: 0, formulas: 0, numbers: 0 };
}

function count(column: ScannedColumn, code: number, by: 1 | -1): void {
  if (code !== held.blank) column.filled += by;
  if (code >= 0) column.formulas += by;
  if (code === held.number) column.numbers += by;
}

function codeOf(value: CellValue): number {
  if (value === null || value === "") return held.blank;
  if (typeof value === "number") return held.number;
  return typeof value === "string" ? held.text : held.other;
}

/** Reads the formulas of one column from the top, and knows one copied down without its text. */
class FormulaReader {
  private copied: object | null = null;
  private last: { readonly formula: CopiedDown; readonly shape: Shape } | undefined;

  constructor(
    private readonly grid: Grid,
    private readonly col: number,
    private readonly shapes: Shapes,
  ) {}

  at(row: number): Shape | null {
    const { grid, col } = this;
    const copied = grid.copyOf?.(row, col) ?? null;
    if (copied !== null && copied === this.copied) return this.last?.shape ?? null;
    const formula = grid.formula(row, col);
    if (formula === null) return null;
    if (this.shapes.isSpent) return unread;
    this.copied = copied;
    if (!this.last?.formula.matches(formula, row)) {
      const shape = this.shapes.of(rowPattern(formula, row, col), formula.length);
      this.last = { formula: new CopiedDown(formula, row, col), shape };
    }
    return this.last.shape;
  }
}

/** Blank rows end a stretch of data; rows of nothing but text at its top are its headings. */
function stretchesOf(
  grid: Grid,
  columns: readonly ScannedColumn[],
  filled: Uint16Array,
  texts: Uint16Array,
  totals: Uint8Array,
): Int32Array {
  const formulaCols = columns.filter(({ formulas }) => formulas > 0).map(({ col }) => col);
  const stretch = new Int32Array(filled.length);
  let number = 0;
  let headingRow = -1;
  let inData = false;
  for (let row = 0; row < filled.length; row++) {
    if (filled[row] === 0) inData = false;
    else if (totals[row] === 1) continue;
    else if (texts[row] === filled[row] && (!inData || isHeadingAgain(row))) {
      if (!inData) headingRow = row;
      inData = false;
    } else {
      if (!inData) number++;
      inData = true;
      stretch[row] = number;
    }
  }
  return stretch;

  /** A second heading row needs no blank row before it: it has words where the rows have formulas. */
  function isHeadingAgain(row: number): boolean {
    if ((filled[row] as number) < 2) return false;
    const words = formulaCols.filter((col) => typeof grid.value(row, col) === "string");
    if (headingRow >= 0 && words.length > 0)
      if (words.every((col) => grid.value(row, col) === grid.value(headingRow, col))) return true;
    return words.length >= 2 && words.length >= 0.6 * formulaCols.length;
  }
}
