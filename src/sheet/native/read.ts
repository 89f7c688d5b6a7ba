/** Reading arguments that may be ranges: what counts as a number in a range and what in an argument. */

import { type CellError, type CellValue, errors, isCellError } from "../../cells";
import { Area, Areas, type Value } from "../area";
import { toNumber } from "../coerce";
import { Matrix } from "../values";
import { spend } from "../work";

/** A value as a list of areas, matrices and single values. */
export function parts(value: Value): readonly (Area | Matrix | CellValue)[] {
  return value instanceof Areas ? value.list : [value];
}

/**
 * The numbers among the arguments. In a range or array only numbers count; a value written as an
 * argument counts when it reads as a number, and is an error otherwise.
 */
export function numbersIn(args: readonly Value[]): readonly number[] | CellError {
  if (args.length === 1 && args[0] instanceof Area) return numbersOf(args[0]);
  const out: number[] = [];
  for (const arg of args)
    for (const part of parts(arg)) {
      if (part instanceof Area || part instanceof Matrix) {
        const found = part instanceof Area ? numbersOf(part) : numbersAmong(part.data);
        if (isCellError(found)) return found;
        for (const x of found) out.push(x);
      } else {
        const x = toNumber(part);
        if (typeof x !== "number") return x;
        out.push(x);
      }
    }
  return out;
}

function numbersOf(area: Area): readonly number[] | CellError {
  const memo = area.fresh();
  spend(area.usedRows * area.usedCols);
  if (memo?.numbers) return memo.numbers as readonly number[] | CellError;
  const { grid } = area;
  const bottom = Math.min(area.bottom, grid.rowCount - 1);
  const right = Math.min(area.right, grid.colCount - 1);
  let found: readonly number[] | CellError | undefined;
  const out: number[] = [];
  for (let row = area.top; row <= bottom && !found; row++)
    for (let col = area.left; col <= right; col++) {
      const value = grid.get(row, col);
      if (typeof value === "number") out.push(value);
      else if (isCellError(value)) {
        found = value;
        break;
      }
    }
  found ??= out;
  if (memo) memo.numbers = found;
  return found;
}

function numbersAmong(data: readonly CellValue[]): readonly number[] | CellError {
  spend(data.length);
  const out: number[] = [];
  for (const value of data) {
    if (typeof value === "number") out.push(value);
    else if (isCellError(value)) return value;
  }
  return out;
}

/** Calls `visit` for each value; blank cells beyond the used part of a sheet are left out. */
export function forEachValue(
  args: readonly Value[],
  visit: (value: CellValue, isArgument: boolean) => void,
): void {
  for (const arg of args)
    for (const part of parts(arg)) {
      if (part instanceof Area) {
        spend(part.usedRows * part.usedCols);
        const bottom = Math.min(part.bottom, part.grid.rowCount - 1);
        const right = Math.min(part.right, part.grid.colCount - 1);
        for (let row = part.top; row <= bottom; row++)
          for (let col = part.left; col <= right; col++) visit(part.grid.get(row, col), false);
      } else if (part instanceof Matrix) for (const value of part.data) visit(value, false);
      else visit(part, true);
    }
}

/** A value as a matrix, one cell for a single value; an error for a union. */
export function matrixOf(value: Value): Matrix | CellError {
  if (value instanceof Matrix) return value;
  if (value instanceof Area) return value.matrix();
  if (value instanceof Areas) return errors.value;
  return new Matrix(1, 1, [value]);
}

/** The values of a single row or column, in order. */
export function vectorOf(value: Value): readonly CellValue[] | CellError {
  const matrix = matrixOf(value);
  if (isCellError(matrix)) return matrix;
  return matrix.rows === 1 || matrix.cols === 1 ? matrix.data : errors.na;
}

/** One value from an argument taken whole, with a fallback where it was left out. */
export function oneOf(value: Value | undefined): CellValue {
  if (value === undefined) return null;
  const matrix = matrixOf(value);
  return isCellError(matrix) ? matrix : matrix.at(0, 0);
}
