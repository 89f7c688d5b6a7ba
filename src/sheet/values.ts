import type { CellError } from "../workbook";

/** An error value; the message says in words what went wrong and is shown, never calculated with. */
export interface ErrorValue extends CellError {
  readonly message?: string;
}

/** One value in a calculation; null is a blank cell or a left-out argument. */
export type Scalar = number | string | boolean | ErrorValue | null;

/** The error values of the formula language, as one object each. */
export const errors = {
  value: { error: "#VALUE!" },
  na: { error: "#N/A" },
  div0: { error: "#DIV/0!" },
  num: { error: "#NUM!" },
  nul: { error: "#NULL!" },
  ref: { error: "#REF!" },
  name: { error: "#NAME?" },
  spill: { error: "#SPILL!" },
  calc: { error: "#CALC!" },
} as const satisfies Record<string, ErrorValue>;

/** The most cells an array may have; more would only exhaust the memory. */
const mostCells = 8_000_000;

/** A rectangle of values, row after row. */
export class Matrix {
  constructor(
    readonly rows: number,
    readonly cols: number,
    readonly data: Scalar[],
  ) {}

  at(row: number, col: number): Scalar {
    return this.data[row * this.cols + col] ?? null;
  }

  /** A cell of the matrix brought to a larger shape: single rows and columns repeat, the rest is #N/A. */
  stretched(row: number, col: number): Scalar {
    const r = this.rows === 1 ? 0 : row;
    const c = this.cols === 1 ? 0 : col;
    return r < this.rows && c < this.cols ? this.at(r, c) : errors.na;
  }

  static of(rows: number, cols: number, cell: (row: number, col: number) => Scalar): Matrix {
    if (rows * cols > mostCells) throw new Unsupported(`an array of ${rows} × ${cols} cells`);
    const data: Scalar[] = new Array(rows * cols);
    for (let r = 0, i = 0; r < rows; r++) for (let c = 0; c < cols; c++) data[i++] = cell(r, c);
    return new Matrix(rows, cols, data);
  }
}

export function isError(value: unknown): value is ErrorValue {
  return typeof value === "object" && value !== null && "error" in value;
}

/** Same value for a reader of the sheet: errors by code and message, the rest by identity. */
export function sameValue(a: Scalar, b: Scalar): boolean {
  if (Object.is(a, b)) return true;
  return isError(a) && isError(b) && a.error === b.error && a.message === b.message;
}

/** Thrown where a formula holds something this model does not evaluate; `message` names it. */
export class Unsupported extends Error {}
