import { type CellValue, errors, isCellError } from "../../cells";
import type { Value } from "../area";
import { finite } from "../coerce";
import { Matrix } from "../values";
import { spend } from "../work";
import type { Natives } from "./natives";
import { matrixOf } from "./read";

/** Determinant and inverse of a square of numbers. */
export function addMatrices(to: Natives): void {
  to.add("MDETERM", "a", (array) => {
    const rows = squareOf(array);
    return Array.isArray(rows) ? finite(eliminate(rows)) : rows;
  });
  to.addSpreading("MINVERSE", "a", (array) => {
    const rows = squareOf(array);
    if (!Array.isArray(rows)) return rows;
    const { length } = rows;
    for (const [r, row] of rows.entries())
      for (let c = 0; c < length; c++) row.push(c === r ? 1 : 0);
    if (eliminate(rows) === 0) return errors.num;
    for (let r = length - 1; r >= 0; r--) {
      const row = rows[r]!;
      const pivot = row[r]!;
      for (let c = 0; c < row.length; c++) row[c]! /= pivot;
      for (let above = 0; above < r; above++) subtract(rows[above]!, row, rows[above]![r]!);
    }
    return Matrix.of(length, length, (r, c) => finite(rows[r]![length + c]!));
  });
}

function squareOf(array: Value): number[][] | CellValue {
  const matrix = matrixOf(array);
  if (isCellError(matrix)) return matrix;
  const { rows, cols, data } = matrix;
  const error = data.find(isCellError);
  if (error) return error;
  if (rows !== cols || !data.every((cell) => typeof cell === "number")) return errors.value;
  // Each row is taken from each other row, cell by cell.
  spend(rows ** 3);
  return Array.from({ length: rows }, (_, r) => data.slice(r * cols, (r + 1) * cols) as number[]);
}

/** Gauss's elimination with the largest pivot of each column; gives the determinant, 0 where it ends early. */
function eliminate(rows: number[][]): number {
  let determinant = 1;
  for (let c = 0; c < rows.length; c++) {
    let best = c;
    for (let r = c + 1; r < rows.length; r++)
      if (Math.abs(rows[r]![c]!) > Math.abs(rows[best]![c]!)) best = r;
    const [pivotRow, other] = [rows[best]!, rows[c]!];
    if (pivotRow[c] === 0) return 0;
    rows[c] = pivotRow;
    rows[best] = other;
    determinant *= best === c ? pivotRow[c]! : -pivotRow[c]!;
    for (let r = c + 1; r < rows.length; r++)
      subtract(rows[r]!, pivotRow, rows[r]![c]! / pivotRow[c]!);
  }
  return determinant;
}

function subtract(from: number[], row: readonly number[], times: number): void {
  for (let c = 0; c < from.length; c++) from[c]! -= times * row[c]!;
}
