import type { CellValue } from "../../src/cells";
import type { ReadGrid, ReadName, ReadWorkbook } from "../../src/reading";

/** A cell of an invented sheet: a value, or a formula with the value that it gives. */
export type Made = CellValue | { readonly f: string; readonly v: CellValue };

/** A sheet from rows of cells, with merged areas as [top, left, bottom, right]. */
export function sheet(
  name: string,
  rows: readonly (readonly Made[])[],
  merged: readonly (readonly [number, number, number, number])[] = [],
): ReadGrid {
  const at = (row: number, col: number): Made => rows[row]?.[col] ?? null;
  const made = (cell: Made) =>
    typeof cell === "object" && cell !== null && "f" in cell ? cell : null;
  const shown = (cell: Made): CellValue =>
    typeof cell === "object" && cell !== null && "f" in cell ? cell.v : cell;
  return {
    name,
    rowCount: rows.length,
    colCount: rows.reduce((most, row) => Math.max(most, row.length), 0),
    value: (row, col) => shown(at(row, col)),
    formula: (row, col) => made(at(row, col))?.f ?? null,
    merges: merged.map(([top, left, bottom, right]) => ({ top, left, bottom, right })),
  };
}

export function workbook(
  sheets: readonly ReadGrid[],
  names: readonly ReadName[] = [],
): ReadWorkbook {
  return { sheets, names };
}

/** Letters of the lines taken for each role in one block, for short expectations. */
export function letters(
  lines: ReadonlyMap<string, { readonly line: number }>,
): Record<string, string> {
  return Object.fromEntries(
    [...lines].map(([role, { line }]) => [role, String.fromCharCode(65 + line)]),
  );
}
