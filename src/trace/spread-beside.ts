import { worksheetFunctions } from "../../functions";
import type { Grid, JobFile } from "../job";
import { inTypedForm } from "../sheet";
import { seenAt } from "./places";
import type { CallTrace, CellSeen } from "./trace-data";

const flows = new Set(["FLOW", "DEVICE_FLOW"]);
const spreads = /FANROW\.(FLOW|DEVICE)_SPREAD\(/i;

/** The spread of a flow, where the same row works one out: its cell, whose own trace is the budget. */
export function spreadBeside(
  calls: readonly CallTrace[],
  grid: Grid,
  row: number,
  file: JobFile,
): CellSeen | undefined {
  if (!calls.some(({ id, unused }) => flows.has(id) && unused === undefined)) return undefined;
  for (let col = 0; col < grid.colCount; col++) {
    const formula = grid.formula(row, col);
    if (formula === null || !/SPREAD/i.test(formula)) continue;
    if (spreads.test(inTypedForm(formula, worksheetFunctions)))
      return seenAt(grid.name, row, col, file);
  }
  return undefined;
}
