import { type CellValue, errors, longestText } from "../cells";
import type { FormulaCell } from "./grid";
import type { Program } from "./program";
import { Matrix, Unsupported } from "./values";
import { Spent } from "./work";

/** What a formula gave: a value, an array that spills, or the reason why it was not evaluated. */
export type Outcome =
  | { readonly value: CellValue; readonly spills?: Matrix }
  | { readonly unsupported: string };

/** Runs a formula from the values now on the sheets. Throws nothing but `Spent`. */
export function evaluate(cell: FormulaCell, program: Program): Outcome {
  if (program.unsupported !== null) return { unsupported: program.unsupported };
  try {
    const result = program.run(cell.row, cell.col);
    if (result instanceof Matrix)
      return { value: storable(result.at(0, 0)), spills: mapped(result) };
    return { value: storable(result as CellValue) };
  } catch (problem) {
    if (problem instanceof Spent) throw problem;
    if (problem instanceof Unsupported) return { unsupported: problem.message };
    // A calculation by steps within steps, of numbers far from any sheet's.
    if (problem instanceof RangeError) return { unsupported: "a calculation of such a size" };
    const what = problem instanceof Error ? problem.message : String(problem);
    return { unsupported: `a fault of Fanrow, please report it: ${what}` };
  }
}

function mapped(matrix: Matrix): Matrix {
  return new Matrix(matrix.rows, matrix.cols, matrix.data.map(storable));
}

function storable(value: CellValue): CellValue {
  if (typeof value === "number" && !Number.isFinite(value)) return errors.num;
  if (typeof value !== "string" || value.length <= longestText) return value;
  return { error: "#VALUE!", message: `the text has more than ${longestText} characters` };
}
