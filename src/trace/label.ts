import { type CellValue, once } from "../cells";
import type { Grid } from "../job";

/** Headings are looked for in so many rows from the top. */
const mostRows = 20;

/** A row with fewer texts is a title or a line of settings. */
const leastHeadings = 4;

/**
 * What a cell is, in the sheet's own words: the heading of its column, or on a sheet without
 * headings the text to its left. "" where there is neither.
 */
export function labelOf(grid: Grid, row: number, col: number): string {
  const heading = headingRow(grid);
  if (heading >= 0 && row > heading) {
    const text = textOf(grid.value(heading, col));
    if (text !== "") return text;
  }
  if (heading >= 0) return "";
  for (let left = col - 1; left >= 0; left--) {
    const value = grid.value(row, left);
    if (value === null || value === "") continue;
    return grid.formula(row, left) === null ? textOf(value) : "";
  }
  return "";
}

/** The first row of several different typed texts side by side, with nothing else; −1 for none. */
const headingRow = once((grid: Grid): number => {
  const last = Math.min(mostRows, grid.rowCount);
  for (let row = 0; row < last; row++) {
    const texts = new Set<string>();
    let isPlain = true;
    for (let col = 0; col < grid.colCount && isPlain; col++) {
      const value = grid.value(row, col);
      if (value === null || value === "") continue;
      isPlain = typeof value === "string" && grid.formula(row, col) === null;
      texts.add(textOf(value));
    }
    if (isPlain && texts.size >= leastHeadings) return row;
  }
  return -1;
});

function textOf(value: CellValue): string {
  return typeof value === "string" ? value.trim().replace(/\s+/g, " ") : "";
}
