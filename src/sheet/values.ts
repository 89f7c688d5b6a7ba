import { type CellError, type CellValue, errors } from "../cells";
import { spend } from "./work";

/** The most cells an array may have, two whole columns; more would only exhaust the memory. */
const mostCells = 2 ** 21;

/** A rectangle of values, row after row. */
export class Matrix {
  constructor(
    readonly rows: number,
    readonly cols: number,
    readonly data: CellValue[],
  ) {}

  at(row: number, col: number): CellValue {
    return this.data[row * this.cols + col] ?? null;
  }

  /** A cell of the matrix brought to a larger shape: single rows and columns repeat, the rest is #N/A. */
  stretched(row: number, col: number): CellValue {
    const r = this.rows === 1 ? 0 : row;
    const c = this.cols === 1 ? 0 : col;
    return r < this.rows && c < this.cols ? this.at(r, c) : errors.na;
  }

  static of(rows: number, cols: number, cell: (row: number, col: number) => CellValue): Matrix {
    if (rows * cols > mostCells) throw new Unsupported(`an array of ${rows} × ${cols} cells`);
    spend(rows * cols);
    const data: CellValue[] = new Array(rows * cols);
    for (let r = 0, i = 0; r < rows; r++) for (let c = 0; c < cols; c++) data[i++] = cell(r, c);
    return new Matrix(rows, cols, data);
  }
}

/** Thrown where a formula holds something this model does not evaluate; `message` names it. */
export class Unsupported extends Error {
  constructor(
    message: string,
    /** What a spreadsheet shows for it: #NAME? for a name that is nowhere, #REF! for a lost sheet. */
    readonly error: CellError = errors.na,
  ) {
    super(message);
  }
}
