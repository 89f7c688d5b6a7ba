import {
  boundsOf,
  cellName,
  kept,
  type Rectangle,
  rectanglesIn,
  rectangleText,
  runsOf,
  sheetPrefix,
} from "../cells";
import type { Book } from "./run";

/** Excel takes addresses of up to 8,192 characters, and cuts off there those it gives. */
const longest = 8_000;
/** Rows whose areas are few enough to be named whole, and how many such pieces one response holds. */
const rowsAPiece = 64;
const piecesATrip = 200;

/**
 * Cells as addresses that name many at once, "A1:A3,B7": neighbours in a column joined, none
 * longer than Excel takes, nor than it gives back with the name of their sheet before each part.
 */
export function addressesOf(cells: Iterable<string>, sheet = ""): string[] {
  const byCol = new Map<number, number[]>();
  for (const cell of cells) {
    const block = boundsOf(cell);
    if (!block) continue;
    kept(byCol, block.left, () => []).push(block.top);
  }
  const parts = [...byCol].sort(([a], [b]) => a - b).flatMap(([col, rows]) => runs(col, rows));
  const around = sheetPrefix(sheet).length + 1;
  const addresses: string[][] = [];
  let left = 0;
  for (const part of parts) {
    left -= part.length + around;
    if (left < 0) {
      addresses.push([]);
      left = longest - part.length - around;
    }
    addresses.at(-1)?.push(part);
  }
  return addresses.map((each) => each.join(","));
}

function runs(col: number, rows: readonly number[]): string[] {
  return runsOf([...rows].sort((a, b) => a - b)).map(([first, last]) =>
    first === last ? cellName(first, col) : `${cellName(first, col)}:${cellName(last, col)}`,
  );
}

/** What areas cover, their address being loaded; undefined where it may have been cut off. */
export function rectanglesOf(areas: Excel.RangeAreas): readonly Rectangle[] | undefined {
  if (areas.isNullObject) return [];
  return areas.address.length > longest ? undefined : rectanglesIn(areas.address);
}

/** Cells that have something in view. */
export function visibleIn(range: Excel.Range): Excel.RangeAreas {
  return range.getSpecialCellsOrNullObject("Visible");
}

/** Part of a range, by its own rows and columns. */
interface Piece {
  readonly row: number;
  readonly col: number;
  readonly rows: number;
  readonly cols: number;
}

/**
 * The areas of a kind in a range that has too many of them to name at once; a piece that still has
 * is asked for in halves. Number of rows and columns must be loaded.
 */
export async function areasInPieces(
  book: Book,
  whole: Excel.Range,
  ask: (piece: Excel.Range) => Excel.RangeAreas,
): Promise<readonly Rectangle[]> {
  const found = new Map<string, Rectangle>();
  const { rowCount, columnCount: cols } = whole;
  const due: Piece[] = [];
  for (let row = 0; row < rowCount; row += rowsAPiece)
    due.push({ row, col: 0, rows: Math.min(rowsAPiece, rowCount - row), cols });
  while (due.length > 0) {
    const asked = due.splice(0, piecesATrip).map((piece) => {
      const { row, col, rows, cols } = piece;
      const areas = ask(whole.getCell(row, col).getResizedRange(rows - 1, cols - 1));
      areas.load("address");
      return { piece, areas };
    });
    await book.sync();
    for (const { piece, areas } of asked) {
      const known = rectanglesOf(areas);
      if (!known) due.push(...halves(piece));
      for (const area of known ?? []) found.set(rectangleText(area), area);
    }
  }
  return [...found.values()];
}

function halves({ row, col, rows, cols }: Piece): Piece[] {
  const [up, left] = rows > 1 ? [rows >> 1, cols] : [rows, cols >> 1];
  const rest =
    rows > 1
      ? { row: row + up, col, rows: rows - up, cols }
      : { row, col: col + left, rows, cols: cols - left };
  return [{ row, col, rows: up, cols: left }, rest];
}
