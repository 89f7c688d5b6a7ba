import { worksheetFunctions } from "../../functions";
import type { Spot } from "../cells";
import type { Calculator, Fresh, JobFile } from "../job";
import { HeldModel } from "../sheet";

const known = new WeakMap<JobFile, Calculator>();

/** What works out a workbook's formulas: its own calculator, or one over the cells as they were read. */
export function calculatorOf(file: JobFile): Calculator {
  let calculator = file.calculator ?? known.get(file);
  if (!calculator) {
    calculator = new HeldModel(file, worksheetFunctions);
    known.set(file, calculator);
  }
  return calculator;
}

/** Works out a formula (without "=") as if it stood in a cell, from the stored values it reads. */
export function evaluateAt(formula: string, { sheet, row, col }: Spot, file: JobFile): Fresh {
  return calculatorOf(file).evaluate(formula, sheet, row, col);
}
