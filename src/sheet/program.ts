import type { CellError, Rectangle } from "../cells";
import type { Cells, Value } from "./area";

/** What a compiled part of a formula does at a cell: 0-based row and column of the formula. */
export type Run = (row: number, col: number) => Value;

/** A formula ready to run for any cell it is copied to. */
export interface Program {
  readonly run: Run;
  /** The references it reads, whatever branch it takes. */
  readonly reads: readonly Reference[];
  /** What keeps it from being evaluated; then `run` is never called. */
  readonly unsupported: string | null;
  /** What a cell shows then that has no stored value to keep. */
  readonly refusal: CellError;
  /** A range stands where one value is wanted: kept as an array formula. */
  readonly needsArray: boolean;
  /** Its value may change without any cell changing (TODAY, NOW). */
  readonly isVolatile: boolean;
  /** Which cells it reads shows only when it runs (OFFSET, INDIRECT). */
  readonly seeks: boolean;
  /** It may go by more than the values that it reads: where it stands, or what a name or table means there. */
  readonly isPlaced: boolean;
}

/** A reference of a formula pattern: each side fixed, or an offset from the formula's cell. */
export class Reference {
  constructor(
    readonly grid: Cells,
    readonly top: number,
    readonly left: number,
    readonly bottom: number,
    readonly right: number,
    readonly fixed: {
      readonly top: boolean;
      readonly left: boolean;
      readonly bottom: boolean;
      readonly right: boolean;
    },
  ) {}

  /** What it means wherever the formula stands; found once. */
  private everywhere: Rectangle | undefined;

  get isFixed(): boolean {
    const { top, left, bottom, right } = this.fixed;
    return top && left && bottom && right;
  }

  /** The cells it means for the formula at a cell; corners in order. */
  at(row: number, col: number): Rectangle {
    if (this.everywhere) return this.everywhere;
    const found = this.meantAt(row, col);
    if (this.isFixed) this.everywhere = found;
    return found;
  }

  private meantAt(row: number, col: number): Rectangle {
    const { fixed } = this;
    const top = fixed.top ? this.top : this.top + row;
    const bottom = fixed.bottom ? this.bottom : this.bottom + row;
    const left = fixed.left ? this.left : this.left + col;
    const right = fixed.right ? this.right : this.right + col;
    return {
      top: Math.min(top, bottom),
      bottom: Math.max(top, bottom),
      left: Math.min(left, right),
      right: Math.max(left, right),
    };
  }
}
