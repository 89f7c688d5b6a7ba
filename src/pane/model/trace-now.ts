import { type CellValue, isSameValue, type Spot } from "../../cells";
import type { Grid, JobFile } from "../../job";

/** What a cell of the open workbook holds at this moment. */
export interface CellNow {
  /** Without "="; null where there is none. */
  readonly formula: string | null;
  readonly value: CellValue;
  /** As the sheet shows it. */
  readonly text: string;
}

/** Whether a cell holds something else than the workbook that was read. */
export function hasChanged(file: JobFile, { sheet, row, col }: Spot, now: CellNow): boolean {
  const grid = file.sheets.find(({ name }) => name === sheet);
  const isInside = grid && row < grid.rowCount && col < grid.colCount;
  const formula = isInside ? grid.formula(row, col) : null;
  const value = isInside ? grid.value(row, col) : null;
  return formula !== now.formula || !isSameValue(value, now.value);
}

/** The workbook as it was read, but for one cell. */
export function withCell(file: JobFile, { sheet, row, col }: Spot, now: CellNow): JobFile {
  const changed = (grid: Grid): Grid => ({
    name: grid.name,
    rowCount: Math.max(grid.rowCount, row + 1),
    colCount: Math.max(grid.colCount, col + 1),
    value: (r, c) => (r === row && c === col ? now.value : valueIn(grid, r, c)),
    formula: (r, c) => (r === row && c === col ? now.formula : formulaIn(grid, r, c)),
  });
  return {
    sheets: file.sheets.map((grid) => (grid.name === sheet ? changed(grid) : grid)),
    ...(file.dateOffset === undefined ? {} : { dateOffset: file.dateOffset }),
  };
}

const isIn = (grid: Grid, row: number, col: number) => row < grid.rowCount && col < grid.colCount;
const valueIn = (grid: Grid, row: number, col: number) =>
  isIn(grid, row, col) ? grid.value(row, col) : null;
const formulaIn = (grid: Grid, row: number, col: number) =>
  isIn(grid, row, col) ? grid.formula(row, col) : null;
