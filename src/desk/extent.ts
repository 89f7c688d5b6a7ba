import type { SheetInfo } from "./host";

/** Most rows the grid lays out below one another; further ones are not reached. */
export const mostRows = 200_000;
export const mostCols = 1_000;

/** The rows and columns of a sheet that the grid lays out: those in use and some blank ones to fill. */
export class Extent {
  readonly rows: number;
  readonly cols: number;
  readonly usedRows: number;
  readonly usedCols: number;
  private readonly hiddenRows: ReadonlySet<number>;
  private readonly hiddenCols: ReadonlySet<number>;

  /** `reach` is a cell that must be part of it, however far out. */
  constructor(facts: SheetInfo, reach: { readonly row: number; readonly col: number }) {
    this.usedRows = facts.rowCount;
    this.usedCols = facts.colCount;
    this.hiddenRows = facts.hiddenRows;
    this.hiddenCols = facts.hiddenCols;
    this.rows = Math.min(mostRows, Math.max(100, facts.rowCount + 50, reach.row + 1));
    this.cols = Math.min(mostCols, Math.max(26, facts.colCount + 4, reach.col + 1));
  }

  holds(row: number, col: number): boolean {
    return row >= 0 && col >= 0 && row < this.rows && col < this.cols;
  }

  isShown(row: number, col: number): boolean {
    return this.holds(row, col) && !this.hiddenRows.has(row) && !this.hiddenCols.has(col);
  }

  /** The row a number of shown rows away, or the last one on the way. */
  rowFrom(row: number, steps: number): number {
    return along(row, steps, this.rows, this.hiddenRows);
  }

  colFrom(col: number, steps: number): number {
    return along(col, steps, this.cols, this.hiddenCols);
  }

  get lastUsed(): { readonly row: number; readonly col: number } {
    return { row: Math.max(0, this.usedRows - 1), col: Math.max(0, this.usedCols - 1) };
  }
}

function along(from: number, steps: number, end: number, hidden: ReadonlySet<number>): number {
  const direction = Math.sign(steps);
  let reached = from;
  let left = Math.abs(steps);
  for (let at = from + direction; left > 0 && at >= 0 && at < end; at += direction) {
    if (hidden.has(at)) continue;
    reached = at;
    left--;
  }
  return reached;
}
