import { parseA1Range, tokenize } from "@borgar/fx/xlsx";
import { isCellError } from "../../cells";
import type { Grid, JobFile } from "../grid";

/**
 * Whether an error cell merely passes on the error of a cell that its formula points at: the
 * finding belongs there.
 */
export function inheritsError(file: JobFile, grid: Grid, row: number, col: number): boolean {
  const formula = grid.formula(row, col);
  if (formula === null) return false;
  return tokenize(`=${formula}`, { mergeRefs: true }).some(
    ({ type, value }) => type === "range" && holdsError(file, grid, value),
  );
}

function holdsError(file: JobFile, own: Grid, reference: string): boolean {
  const mark = reference.lastIndexOf("!");
  const name = reference.slice(0, Math.max(0, mark)).replace(/^'|'$/g, "").replaceAll("''", "'");
  const grid =
    mark < 0 ? own : file.sheets.find((sheet) => sheet.name.toLowerCase() === name.toLowerCase());
  const range = parseA1Range(reference.slice(mark + 1));
  if (!grid || !range) return false;
  const lastRow = Math.min(range.bottom ?? grid.rowCount, grid.rowCount - 1);
  const lastCol = Math.min(range.right ?? grid.colCount, grid.colCount - 1);
  for (let row = range.top ?? 0; row <= lastRow; row++)
    for (let col = range.left ?? 0; col <= lastCol; col++)
      if (isCellError(grid.value(row, col))) return true;
  return false;
}
