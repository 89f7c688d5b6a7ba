import { worksheetFunctions } from "../../functions";
import { agrees, kept, once } from "../cells";
import type { Grid, JobFile } from "../job";
import { inTypedForm } from "../sheet";
import { evaluateAt } from "./calculator";
import { prefix } from "./call-trace";

/** Our functions give so many cells side by side at most. */
const mostAcross = 4;

/**
 * The formula of ours that spills over a cell without one: the nearest above, in its own column or
 * a few to the left, whose result at that place is what the cell stores. Hosts do not tell.
 */
export function anchorOf(
  grid: Grid,
  row: number,
  col: number,
  file: JobFile,
): { readonly row: number; readonly col: number } | undefined {
  const stored = grid.value(row, col);
  if (stored === null) return undefined;
  for (let left = col; left >= 0 && left > col - mostAcross; left--) {
    const top = formulaAbove(grid, row, left);
    if (top === undefined || (top === row && left === col)) continue;
    const formula = inTypedForm(grid.formula(top, left) ?? "", worksheetFunctions);
    if (!formula.toUpperCase().includes(prefix)) continue;
    const [r, c] = [row - top + 1, col - left + 1];
    const at = { sheet: grid.name, row: top, col: left };
    const found = evaluateAt(`INDEX(${formula},${r},${c})`, at, file);
    if ("value" in found && typeof found.value !== "object" && agrees(stored, found.value))
      return { row: top, col: left };
  }
  return undefined;
}

/** Rows with a formula, by column. A sheet that was read does not change. */
const rowsWithFormulas = once((_: Grid) => new Map<number, number[]>());

function formulaAbove(grid: Grid, row: number, col: number): number | undefined {
  const rows = kept(rowsWithFormulas(grid), col, () =>
    [...Array(grid.rowCount).keys()].filter((each) => grid.formula(each, col) !== null),
  );
  return rows.findLast((each) => each <= row);
}
