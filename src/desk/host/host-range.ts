import {
  addressText,
  around,
  holdsCell,
  maxCols,
  maxRows,
  type Place,
  type Rectangle,
  sheetPrefix,
} from "../../cells";
import type { CellArea, SheetTab } from "./book";
import { HostError, invalidArgument } from "./wire/errors";

/** Most cells whose values one request may read or write. */
const mostCells = 5_000_000;

/** A rectangle of cells on a sheet, 0-based, both corners included. */
export class HostRange implements Rectangle, CellArea {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;

  /** Refuses corners outside the sheet. */
  constructor(
    readonly tab: SheetTab,
    { top, left, bottom, right }: Rectangle,
  ) {
    if (top < 0 || left < 0 || bottom >= maxRows || right >= maxCols)
      throw invalidArgument("The range would reach outside the sheet.");
    if (bottom < top || right < left)
      throw invalidArgument("The range would hold no row or no column.");
    this.top = top;
    this.left = left;
    this.bottom = bottom;
    this.right = right;
  }

  get rows(): number {
    return this.bottom - this.top + 1;
  }

  get cols(): number {
    return this.right - this.left + 1;
  }

  get rects(): readonly Rectangle[] {
    return [this];
  }

  /** The cells as plain numbers and the sheet's name. */
  get ref(): Place {
    const { top, left, bottom, right } = this;
    return { sheet: this.tab.name, top, left, bottom, right };
  }

  get isEntireColumn(): boolean {
    return this.rows === maxRows;
  }

  get isEntireRow(): boolean {
    return this.cols === maxCols;
  }

  get address(): string {
    return sheetPrefix(this.tab.name) + addressText(this);
  }

  /** Refuses a range whose cells are too many to hand over. */
  checkCellCount(): void {
    const count = this.rows * this.cols;
    if (count <= mostCells) return;
    throw new HostError(
      "RangeExceedsLimit",
      `${this.address} has ${count} cells; at most ${mostCells} can be handled at once. Take it in blocks.`,
    );
  }

  with(changes: Partial<Rectangle>): HostRange {
    const { top, left, bottom, right } = this;
    return new HostRange(this.tab, { top, left, bottom, right, ...changes });
  }

  /** A cell counted from the range's own corner; it may lie outside the range. */
  cell(row: number, col: number): HostRange {
    const [r, c] = [this.top + row, this.left + col];
    return this.with({ top: r, bottom: r, left: c, right: c });
  }

  intersection(other: HostRange): HostRange | null {
    if (other.tab !== this.tab) return null;
    const top = Math.max(this.top, other.top);
    const left = Math.max(this.left, other.left);
    const bottom = Math.min(this.bottom, other.bottom);
    const right = Math.min(this.right, other.right);
    if (bottom < top || right < left) return null;
    return this.with({ top, left, bottom, right });
  }

  boundingRect(other: HostRange): HostRange {
    if (other.tab !== this.tab)
      throw invalidArgument(`${other.address} is on another sheet than ${this.address}.`);
    return this.with(around(this, other));
  }

  holds(row: number, col: number): boolean {
    return holdsCell(this, row, col);
  }

  /** Calls `visit` for every cell, row by row. */
  forEach(visit: (row: number, col: number) => void): void {
    for (let row = this.top; row <= this.bottom; row++)
      for (let col = this.left; col <= this.right; col++) visit(row, col);
  }
}
