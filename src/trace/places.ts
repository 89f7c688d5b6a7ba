import { parseA1Ref, parseStructRef, type Token, tokenTypes } from "@borgar/fx/xlsx";
import {
  type CellValue,
  cellName,
  kept,
  once,
  type Place,
  type Spot,
  sameName,
  sheetPrefix,
} from "../cells";
import type { Grid, JobFile } from "../job";
import type { Piece } from "./calls";
import { labelOf } from "./label";
import type { CellSeen, Read } from "./trace-data";

/** Larger ranges are told of, not listed. */
export const mostListed = 12;

/** The sheet of this name, whatever the case. */
export function gridOf(file: JobFile, sheet: string): Grid | undefined {
  return (
    file.sheets.find(({ name }) => name === sheet) ??
    file.sheets.find(({ name }) => name.toLowerCase() === sheet.toLowerCase())
  );
}

export function isReference({ type }: Token): boolean {
  return (
    type === tokenTypes.REF_RANGE || type === tokenTypes.REF_BEAM || type === tokenTypes.REF_TERNARY
  );
}

/** Where a reference points; whole columns and rows end where the sheet does. Undefined elsewhere. */
export function placeOf(text: string, home: string, file: JobFile): Place | undefined {
  const parsed = parseA1Ref(text);
  if (!parsed || !("range" in parsed) || parsed.workbookName) return undefined;
  const grid = gridOf(file, parsed.sheetName || home);
  if (!grid) return undefined;
  const { top, left, bottom, right } = parsed.range;
  const ends = [top ?? 0, bottom ?? (top === null ? grid.rowCount - 1 : top)] as [number, number];
  const sides = [left ?? 0, right ?? (left === null ? grid.colCount - 1 : left)] as [
    number,
    number,
  ];
  return {
    sheet: grid.name,
    top: Math.min(...ends),
    bottom: Math.max(...ends),
    left: Math.min(...sides),
    right: Math.max(...sides),
  };
}

/** The cell that a text such as Fans!P3 or 'Old fans'!$P$3 names; undefined for any other text. */
export function cellNamed(text: string): Spot | undefined {
  const parsed = parseA1Ref(text.trim());
  if (!parsed || !("range" in parsed) || parsed.workbookName || !parsed.sheetName) return undefined;
  const { top, left, bottom, right } = parsed.range;
  const isCell = typeof top === "number" && typeof left === "number";
  return isCell && top === bottom && left === right
    ? { sheet: parsed.sheetName, row: top, col: left }
    : undefined;
}

/** Where a name of the workbook points, or columns of one of its tables. Undefined elsewhere. */
function placeNamed({ type, value }: Token, at: Spot, file: JobFile): Place | undefined {
  if (type === tokenTypes.REF_NAMED) {
    const named = file.names?.find(({ name }) => sameName(name, value));
    return named && placeOf(named.formula, at.sheet, file);
  }
  const parsed = type === tokenTypes.REF_STRUCT ? parseStructRef(value) : undefined;
  const table = file.tables?.find(({ name }) => sameName(name, parsed?.table ?? ""));
  const [first = "", last = first] = parsed?.columns ?? [];
  const [from, to] = [first, last].map((each) =>
    (table?.columns ?? []).findIndex((column) => sameName(column, each)),
  ) as [number, number];
  if (!table || from < 0 || to < 0) return undefined;
  const rows = parsed?.sections?.includes("this row")
    ? { top: at.row, bottom: at.row }
    : { top: table.top + 1, bottom: table.bottom };
  return { sheet: table.sheet, ...rows, left: table.left + from, right: table.left + to };
}

/** Every reference in a part of a formula, each once, also by the names of cells and tables. */
export function readsIn(piece: Piece, at: Spot, file: JobFile): Read[] {
  const reads: Read[] = [];
  const seen = new Set<string>();
  for (const token of piece.tokens) {
    const place = isReference(token)
      ? placeOf(token.value, at.sheet, file)
      : placeNamed(token, at, file);
    const key = place && JSON.stringify(place);
    if (!place || !key || seen.has(key)) continue;
    seen.add(key);
    reads.push(readAt(token.value, place, file));
  }
  return reads;
}

function readAt(text: string, place: Place, file: JobFile): Read {
  const count = (place.bottom - place.top + 1) * (place.right - place.left + 1);
  const cells: CellSeen[] = [];
  if (count <= mostListed)
    for (let row = place.top; row <= place.bottom; row++)
      for (let col = place.left; col <= place.right; col++)
        cells.push(seenAt(place.sheet, row, col, file));
  return { text, place, cells, count, filled: filledIn(place, file) };
}

/** Cells that hold anything, by sheet and place: the ranges of look-ups are read by every row. */
const filledOf = once((_: Grid) => new Map<string, number>());

function filledIn(place: Place, file: JobFile): number {
  const grid = gridOf(file, place.sheet);
  if (!grid) return 0;
  return kept(filledOf(grid), JSON.stringify(place), () => {
    let filled = 0;
    forEachUsed(place, file, (_row, _col, value) => {
      if (value !== null && value !== "") filled++;
    });
    return filled;
  });
}

/** Each cell of a place that lies in the used part of its sheet. */
export function forEachUsed(
  place: Place,
  file: JobFile,
  visit: (row: number, col: number, value: CellValue) => void,
): void {
  const grid = gridOf(file, place.sheet);
  if (!grid) return;
  const bottom = Math.min(place.bottom, grid.rowCount - 1);
  const right = Math.min(place.right, grid.colCount - 1);
  for (let row = place.top; row <= bottom; row++)
    for (let col = place.left; col <= right; col++) visit(row, col, grid.value(row, col));
}

/** The values of a place, row by row; blank beyond the used part of the sheet. */
export function matrixAt(place: Place, file: JobFile): CellValue[][] {
  const grid = gridOf(file, place.sheet);
  const out: CellValue[][] = [];
  for (let row = place.top; row <= place.bottom; row++) {
    const line: CellValue[] = [];
    for (let col = place.left; col <= place.right; col++) line.push(grid?.value(row, col) ?? null);
    out.push(line);
  }
  return out;
}

export function seenAt(sheet: string, row: number, col: number, file: JobFile): CellSeen {
  const grid = gridOf(file, sheet);
  return {
    place: { sheet, top: row, left: col, bottom: row, right: col },
    name: sheetPrefix(sheet) + cellName(row, col),
    label: grid ? labelOf(grid, row, col) : "",
    value: grid?.value(row, col) ?? null,
  };
}
