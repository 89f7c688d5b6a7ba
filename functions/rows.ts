import { type Column, columns, oneValue } from "../src/algebra";
import type { Formula } from "../src/formulas";
import { invalid, missing } from "./problem";

/** A range as a host passes it: rows of cells. */
export type Matrix = unknown[][];

/** An argument: a range, one value, or null where an optional one is left out. */
export type Argument = unknown;

/** The most cells a call may cover: one whole column of a sheet. */
export const mostCells = 1_048_576;

/** What stands in a spoiled cell, and how much it outweighs another. */
interface Fault {
  readonly weight: number;
  readonly cell: object | "";
}

interface NumberOptions {
  readonly blank?: "nothing yet" | "needed" | "allowed";
  readonly otherwise?: number;
  readonly refuse?: (value: number) => string | undefined;
}

const blankNeeded = 1;
const nothingYet = 2;
const unusable = 3;

/**
 * The rows that one call works on: its arguments brought to one shape.
 *
 * Each argument is one cell, or a range; all ranges have the same shape, or one row or column that
 * repeats. A bad cell spoils only its own result. A blank where a reading goes gives a blank
 * result: it is never taken as zero.
 */
export class Rows {
  readonly height: number;
  readonly width: number;
  readonly length: number;
  /** By row; made when the first row is spoiled. */
  private faults: Map<number, Fault> | undefined;

  constructor(private readonly named: Readonly<Record<string, Argument>>) {
    let height = 1;
    let width = 1;
    for (const name in named) {
      const matrix = this.matrix(name);
      if (matrix === undefined) continue;
      if (matrix.length > height) height = matrix.length;
      const across = matrix[0]?.length ?? 0;
      if (across > width) width = across;
    }
    this.height = height;
    this.width = width;
    this.length = height * width;
    if (this.length > mostCells)
      throw invalid(
        `${this.length} cells in one call: give at most ${mostCells}, for instance the rows in use`,
      );
    for (const name in named) {
      const matrix = this.matrix(name);
      if (matrix !== undefined) this.requireShape(name, matrix);
    }
  }

  /** Whether the argument was given at all. */
  has(name: string): boolean {
    return this.matrix(name) !== undefined;
  }

  private matrix(name: string): Matrix | undefined {
    const argument = this.named[name];
    return argument === null || argument === undefined ? undefined : toMatrix(argument);
  }

  /**
   * An argument as numbers: one number for a single sound cell or a single row, otherwise a value a
   * row; NaN where the cell is spoiled.
   *
   * `blank: "nothing yet"` lets a blank cell give a blank result; "needed" makes it `#N/A`;
   * "allowed" leaves it to the function, which finds NaN there.
   * `otherwise` serves where the argument is left out. `refuse` returns why a number will not do.
   */
  numbers(name: string, options: NumberOptions = {}): Column {
    const matrix = this.matrix(name);
    if (!matrix) {
      if (options.otherwise !== undefined) return options.otherwise;
      throw missing(`${name} is missing`);
    }
    const { refuse } = options;
    if (matrix.length === 1 && matrix[0]?.length === 1) {
      const value = matrix[0][0];
      if (typeof value === "number" && Number.isFinite(value) && !refuse?.(value)) return value;
      if (this.length === 1) return this.number(0, name, value, options);
    }
    const out = new Float64Array(this.length);
    for (let i = 0; i < this.length; i++)
      out[i] = this.number(i, name, this.at(matrix, i), options);
    return out;
  }

  private number(i: number, name: string, cell: unknown, options: NumberOptions): number {
    if (typeof cell !== "number" || !Number.isFinite(cell)) {
      this.spoilNumber(i, name, cell, options.blank ?? "needed");
      return Number.NaN;
    }
    const reason = options.refuse?.(cell);
    if (!reason) return cell;
    this.spoil(i, unusable, invalid(`${name} ${cell}: ${reason}`));
    return Number.NaN;
  }

  /** A formula's values: one number for a single row, otherwise a value a row. */
  values(formula: Formula, inputs: Readonly<Record<string, Column>>): Column {
    return this.length === 1 && areNumbers(inputs)
      ? oneValue(formula, inputs)
      : columns(formula, inputs, this.length);
  }

  /** An argument as text, row by row; "" for a blank. Numbers become their digits. */
  texts(name: string): (i: number) => string {
    const matrix = this.matrix(name);
    if (!matrix) return () => "";
    return (i) => {
      const cell = this.at(matrix, i);
      if (isError(cell)) {
        this.spoil(i, unusable, cell);
        return "";
      }
      return cell === null || cell === undefined ? "" : String(cell).trim();
    };
  }

  /** Marks a row as spoiled by a reason of the function's own. */
  refuse(i: number, cell: object): void {
    this.spoil(i, unusable, cell);
  }

  /** Whether an earlier argument has spoiled the row. */
  isSpoiled(i: number): boolean {
    return this.faults?.has(i) === true;
  }

  /** The result in the shape of the arguments: the fault of a spoiled row, else `cell(i)`. */
  result(cell: (i: number) => unknown): Matrix {
    const { width } = this;
    const out: Matrix = new Array(this.height);
    for (let r = 0, i = 0; r < this.height; r++) {
      const row = new Array(width);
      for (let c = 0; c < width; c++, i++) {
        const fault = this.faults?.get(i);
        const value = fault ? fault.cell : cell(i);
        row[c] = typeof value === "number" ? sound(value) : value;
      }
      out[r] = row;
    }
    return out;
  }

  private at(matrix: Matrix, i: number): unknown {
    const r = matrix.length === 1 ? 0 : Math.floor(i / this.width);
    const row = matrix[r] as unknown[];
    return row.length === 1 ? row[0] : row[i % this.width];
  }

  private spoilNumber(i: number, name: string, cell: unknown, blank: string): void {
    if (isBlank(cell)) {
      if (blank === "allowed") return;
      if (blank === "nothing yet") this.spoil(i, nothingYet, "");
      else this.spoil(i, blankNeeded, missing(`${name} is blank`));
    } else if (isError(cell)) this.spoil(i, unusable, cell);
    else if (typeof cell === "string")
      this.spoil(i, unusable, invalid(`${name} "${cell}" is text: type it as a number`));
    else this.spoil(i, unusable, invalid(`${name} ${String(cell)} is not a number`));
  }

  private spoil(i: number, weight: number, cell: object | ""): void {
    this.faults ??= new Map();
    const known = this.faults.get(i);
    if (!known || known.weight < weight) this.faults.set(i, { weight, cell });
  }

  private requireShape(name: string, matrix: Matrix): void {
    const height = matrix.length;
    const width = matrix[0]?.length ?? 0;
    const fits = (own: number, all: number) => own === all || own === 1;
    if (fits(height, this.height) && fits(width, this.width)) return;
    throw invalid(
      `${name} is ${height} × ${width} cells where ${this.height} × ${this.width} are needed: give ranges of one size, or one cell`,
    );
  }
}

function areNumbers(
  inputs: Readonly<Record<string, Column>>,
): inputs is Readonly<Record<string, number>> {
  for (const name in inputs) if (typeof inputs[name] !== "number") return false;
  return true;
}

export function isBlank(cell: unknown): boolean {
  return cell === null || cell === undefined || (typeof cell === "string" && cell.trim() === "");
}

/** An error value as a host passes it: an object, never a number, a text or a blank. */
export function isError(cell: unknown): cell is object {
  return typeof cell === "object" && cell !== null;
}

/** One cell or a range, as rows of cells. */
export function toMatrix(argument: Argument): Matrix {
  if (!Array.isArray(argument)) return [[argument]];
  return argument.length > 0 && Array.isArray(argument[0]) ? (argument as Matrix) : [argument];
}

/** A number as a cell may hold it: finite, and zero without a sign. */
function sound(value: number): unknown {
  if (!Number.isFinite(value)) return notANumber();
  return value === 0 ? 0 : value;
}

function notANumber(): object {
  return invalid("the result is not a number: check the sizes and signs of the arguments");
}

/** Row `i` of an argument read as numbers. */
export function pick(column: Column, i: number): number {
  return typeof column === "number" ? column : (column[i] as number);
}
