import { worksheetFunctions } from "../../functions";
import { once, type Spot } from "../cells";
import type { Calculator, Fresh, JobFile } from "../job";
import { HeldModel } from "../sheet";

/** What works out a workbook's formulas: its own calculator, or one over the cells as they were read. */
export const calculatorOf = once(
  (file: JobFile): Calculator => file.calculator ?? new HeldModel(file, worksheetFunctions),
);

/** Works out a formula (without "=") as if it stood in a cell, from the stored values it reads. */
export function evaluateAt(formula: string, { sheet, row, col }: Spot, file: JobFile): Fresh {
  return calculatorOf(file).evaluate(formula, sheet, row, col);
}
