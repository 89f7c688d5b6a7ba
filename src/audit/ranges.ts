import { cellName } from "../cells";
import type { Grid } from "../job";
import type { End, Reach } from "./formula-shape";
import type { SheetScan } from "./sheet-scan";

/** Rows of a sheet, both ends included, in some columns. */
export interface Target {
  readonly scan: SheetScan;
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
}

/** What a reference of several rows covers, from a formula at this cell; undefined for others. */
export function targetOf(
  { sheet, rows, cols }: Reach,
  own: SheetScan,
  row: number,
  col: number,
  scans: ReadonlyMap<string, SheetScan>,
): Target | undefined {
  const scan = sheet === "" ? own : scans.get(sheet.toLowerCase());
  if (!scan || !rows || !cols) return undefined;
  const at = (end: End, from: number) => (end.fixed ? end.at : from + end.at);
  const [top, bottom] = rows.map((end) => at(end, row)) as [number, number];
  const [left, right] = cols.map((end) => at(end, col)) as [number, number];
  return bottom > top && top >= 0 && left >= 0 ? { scan, top, bottom, left, right } : undefined;
}

/** The data row that stands right below a range, or right above it, and is not in it. */
export function missedRow(target: Target, ownRow: number): number | undefined {
  const { scan, top, bottom, left, right } = target;
  for (let col = left; col <= Math.min(right, scan.grid.colCount - 1); col++) {
    if (goesOn(scan, bottom, bottom + 1, col, ownRow)) return bottom + 1;
    // Above the first row only a number is surely no heading.
    if (top > 0 && goesOn(scan, top, top - 1, col, ownRow))
      if (typeof scan.grid.value(top - 1, col) === "number") return top - 1;
  }
  return undefined;
}

/** Whether the data of a range's end row goes on in the row beside it. */
function goesOn(scan: SheetScan, end: number, next: number, col: number, own: number): boolean {
  const { grid, stretch, filled } = scan;
  if (next === own || next >= grid.rowCount || !stretch[end]) return false;
  if (stretch[end] !== stretch[next]) return false;
  // A remark below a table is no row of it.
  if (2 * (filled[next] as number) < (filled[end] as number)) return false;
  const [here, there] = [sort(grid, end, col), sort(grid, next, col)];
  return here === there || here === "" || there === "";
}

function sort(grid: Grid, row: number, col: number): string {
  if (grid.formula(row, col) !== null) return "formula";
  const value = grid.value(row, col);
  return value === null || value === "" ? "" : typeof value;
}

/** "Fans!P2:P105" */
export function targetName({ scan, top, bottom, left, right }: Target): string {
  return `${scan.grid.name}!${cellName(top, left)}:${cellName(bottom, right)}`;
}
