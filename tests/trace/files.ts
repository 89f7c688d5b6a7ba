import { readFileSync } from "node:fs";
import { join } from "node:path";
import { toJobFile } from "../../src/command";
import type { JobFile } from "../../src/job";
import { cellNamed, type Trace, trace } from "../../src/trace";
import { Workbook } from "../../src/workbook";
import { demoName } from "../../workbooks/files";

const path = join(import.meta.dirname, "../../workbooks", demoName);

/** The demo job as the command reads it, with formulas evaluated afresh. */
export const demo = toJobFile(Workbook.open(readFileSync(path)));

/** The same as Excel's pane reads it: values and formulas, and nothing is evaluated. */
export const demoInPane: JobFile = { sheets: demo.sheets, dateOffset: demo.dateOffset ?? 0 };

export function traced(file: JobFile, name: string): Trace {
  const place = cellNamed(name);
  if (!place) throw new Error(`${name} names no cell`);
  return trace(file, place.sheet, place.row, place.col);
}

/** The first cell below a heading of the demo job for which `wanted` holds. */
export function cellUnder(
  sheet: string,
  heading: string,
  wanted: (value: unknown, row: number) => boolean = () => true,
): { readonly row: number; readonly col: number } {
  const grid = demo.sheets.find(({ name }) => name === sheet);
  for (let col = 0; grid && col < grid.colCount; col++) {
    if (!String(grid.value(0, col)).startsWith(heading)) continue;
    for (let row = 1; row < grid.rowCount; row++)
      if (wanted(grid.value(row, col), row)) return { row, col };
  }
  throw new Error(`${sheet} has no such cell under ${heading}`);
}
