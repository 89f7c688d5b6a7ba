import { type CellValue, errors, maxCols, maxRows, type Rectangle } from "../cells";
import { Matrix } from "./values";

/** What an area reads from: the values of one sheet. */
export interface Cells {
  readonly name: string;
  readonly rowCount: number;
  readonly colCount: number;
  readonly clock: Clock;
  readonly hiddenRows: ReadonlySet<number>;
  get(row: number, col: number): CellValue;
  /** Whether a value in some columns, or how far the sheet is used, has changed after so many writes. */
  hasChanged(left: number, right: number, since: number): boolean;
  /** Formula text of a cell, undefined where it has none. */
  formulaText(row: number, col: number): string | undefined;
  /** What a spilled formula fills; null where the cell holds none. */
  spillAt(row: number, col: number): Rectangle | null;
}

/** Counts the states of the values, so that whatever was worked out from them can be kept. */
export interface Clock {
  revision: number;
  /** How often a value was put on a sheet. */
  writes: number;
}

/** What was worked out from the values of an area, kept until a value in one of its columns changes. */
interface Memo {
  revision: number;
  readonly since: number;
  matrix?: Matrix;
  numbers?: readonly number[] | { readonly error: string };
  nested?: unknown[][];
  /** Results over the whole area, by function. */
  results?: Map<string, CellValue>;
  places?: ReadonlyMap<number | string, readonly number[]>;
}

/** A reference to one rectangle of cells. Reads are clipped to the used part of the sheet. */
export class Area implements Rectangle {
  /** Present on areas that many formulas share (absolute references). */
  memo: Memo | undefined;

  constructor(
    readonly grid: Cells,
    readonly top: number,
    readonly left: number,
    readonly bottom: number,
    readonly right: number,
  ) {}

  get rows(): number {
    return this.bottom - this.top + 1;
  }

  get cols(): number {
    return this.right - this.left + 1;
  }

  /** Rows down to the last used one; at least one, so that a result always has a shape. */
  get usedRows(): number {
    return Math.max(1, Math.min(this.bottom + 1, this.grid.rowCount) - this.top);
  }

  get usedCols(): number {
    return Math.max(1, Math.min(this.right + 1, this.grid.colCount) - this.left);
  }

  at(row: number, col: number): CellValue {
    return this.grid.get(this.top + row, this.left + col);
  }

  /** The memo, a new one when a value has changed since; undefined for areas that keep none. */
  fresh(): Memo | undefined {
    const { memo } = this;
    if (memo === undefined) return undefined;
    const { revision, writes } = this.grid.clock;
    if (memo.revision === revision) return memo;
    if (memo.revision < 0 || this.grid.hasChanged(this.left, this.right, memo.since))
      this.memo = { revision, since: writes };
    else memo.revision = revision;
    return this.memo;
  }

  matrix(): Matrix {
    const memo = this.fresh();
    if (memo?.matrix) return memo.matrix;
    // A whole column or row is cut to the used cells; a plain range keeps its own size.
    const rows = this.rows >= maxRows ? this.usedRows : this.rows;
    const cols = this.cols >= maxCols ? this.usedCols : this.cols;
    const matrix = Matrix.of(rows, cols, (r, c) => this.at(r, c));
    if (memo) memo.matrix = matrix;
    return matrix;
  }
}

/** A union of areas, as in (A1:A3,C1). */
export class Areas {
  constructor(readonly list: readonly Area[]) {}
}

/** How often a formula's own place told which cell of a range it read. */
export const intersections = { met: 0 };

/** The cell of a range that stands in the row or column of the formula (implicit intersection). */
export function intersect(area: Area, row: number, col: number): CellValue {
  if (area.top === area.bottom && area.left === area.right) return area.at(0, 0);
  intersections.met++;
  if (area.left === area.right && row >= area.top && row <= area.bottom)
    return area.grid.get(row, area.left);
  if (area.top === area.bottom && col >= area.left && col <= area.right)
    return area.grid.get(area.top, col);
  return errors.value;
}

/** A value of a calculation: references stay references until they are read. */
export type Value = CellValue | Matrix | Area | Areas;
