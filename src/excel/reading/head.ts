import { areasInPieces, rectanglesOf } from "../areas";
import type { Book } from "../run";
import { colorLeaves } from "./colors";
import { extentOf } from "./extent";
import { HiddenLines } from "./looks";
import type { SheetFacts } from "./notes";
import { bytesOfRow, type Piece, type SheetPlan } from "./pieces";
import { SheetCells } from "./sheet-cells";

/** A sheet with its first rows read, and the pieces that are still to be read. */
interface SheetHead {
  readonly plan: SheetPlan;
  readonly used: Excel.Range;
  readonly facts: SheetFacts;
  readonly usedRows: number;
  readonly pieces: readonly Piece[];
}

/** Columns of the first rows that are read at once; few sheets have more. */
const headCols = 64;
/** Rows that all sheets together get in the first read, and the least that one sheet gets. */
const headRowsOfAll = 2_000;
const leastHeadRows = 20;
const mostHeadRows = 1_000;

const sheetLeaves = "items/name,items/visibility,items/protection/protected";
const usedLeaves = `rowIndex,columnIndex,rowCount,columnCount,rowHidden,columnHidden,${colorLeaves}`;
const headLeaves = "rowIndex,columnIndex,values,formulas,valueTypes,numberFormat";

/** The sheets of the workbook; to be loaded with a sync. */
export function loadSheets(book: Book): Excel.WorksheetCollection {
  const { sheets } = book;
  sheets.load(sheetLeaves);
  return sheets;
}

/**
 * Reads the shape of each sheet and its first rows in one round trip. A small job is read whole
 * by that. `beside` asks for more along with it, again where Excel refuses the first try.
 */
export async function readHeads(
  book: Book,
  sheets: readonly Excel.Worksheet[],
  beside: () => void,
): Promise<SheetHead[]> {
  const share = Math.floor(headRowsOfAll / Math.max(1, sheets.length));
  const rows = Math.min(mostHeadRows, Math.max(leastHeadRows, share));
  try {
    beside();
    return await readFirst(book, sheets, { rows, merged: true });
  } catch (thrown) {
    const isTooLarge = (thrown as { code?: unknown }).code === "ResponsePayloadSizeLimitExceeded";
    // Excel names no merged areas where there are more than 512; the rest is read without them.
    beside();
    return await readFirst(book, sheets, { rows: isTooLarge ? 1 : rows, merged: isTooLarge });
  }
}

interface Extent {
  readonly rows: number;
  /** Ask for the merged cells too. */
  readonly merged: boolean;
}

async function readFirst(
  book: Book,
  sheets: readonly Excel.Worksheet[],
  extent: Extent,
): Promise<SheetHead[]> {
  const asked = sheets.map((proxy): Asked => {
    const used = proxy.getUsedRangeOrNullObject(true);
    used.load(usedLeaves);
    const merged = extent.merged ? used.getMergedAreasOrNullObject() : undefined;
    merged?.load("address");
    proxy.autoFilter.load("isDataFiltered");
    const first = proxy.getRangeByIndexes(0, 0, extent.rows, headCols);
    const head = used.getIntersectionOrNullObject(first);
    head.load(headLeaves);
    return { proxy, used, merged, head };
  });
  await book.sync();
  return asked.map((each) => toHead(each, extent.rows));
}

/** The question which lines of the sheets are hidden. */
export function hiddenLinesOf(heads: readonly SheetHead[]): HiddenLines {
  return new HiddenLines(heads.map(({ used, facts }) => ({ used, ...facts })));
}

/** Notes on each sheet which of its lines are hidden. */
export async function noteHidden(
  book: Book,
  heads: readonly SheetHead[],
  hidden: HiddenLines,
): Promise<void> {
  for (const [i, { rows, cols }] of (await hidden.answer(book)).entries()) {
    const { cells } = (heads[i] as SheetHead).plan;
    cells.looks = { ...cells.looks, hiddenRows: rows, hiddenCols: cols };
  }
}

/** Notes on each sheet its merged cells; those that could not be named at once are asked for in pieces. */
export async function noteMerged(book: Book, heads: readonly SheetHead[]): Promise<void> {
  for (const { used, facts, plan } of heads) {
    facts.merged ??= await areasInPieces(book, used, (piece) =>
      piece.getMergedAreasOrNullObject(),
    ).catch(() => null);
    plan.cells.merges = facts.merged ?? [];
  }
}

interface Asked {
  readonly proxy: Excel.Worksheet;
  readonly used: Excel.Range;
  readonly merged: Excel.RangeAreas | undefined;
  readonly head: Excel.Range;
}

function toHead({ proxy, used, merged, head }: Asked, rows: number): SheetHead {
  const isEmpty = used.isNullObject;
  const { bottom, right, tooFar } = extentOf(used);
  const facts: SheetFacts = {
    name: proxy.name,
    visibility: proxy.visibility,
    isProtected: proxy.protection.protected,
    rowsHidden: isEmpty ? false : used.rowHidden,
    columnsHidden: isEmpty ? false : used.columnHidden,
    isFiltered: proxy.autoFilter.isDataFiltered === true,
    merged: mergedIn(used, merged),
    tooFar,
  };
  const cells = new SheetCells(proxy.name, bottom + 1, right + 1);
  cells.hiddenSheet = hiddenAs[proxy.visibility];
  const plan: SheetPlan = { proxy, cells, rowBytes: 50 * (right + 1) };
  if (isEmpty) return { plan, used, facts, usedRows: 0, pieces: [] };
  if (!head.isNullObject) {
    cells.put({ top: head.rowIndex, left: head.columnIndex }, head);
    if (right < headCols) plan.rowBytes = bytesOfRow(head);
  }
  const pieces: Piece[] = [];
  if (right >= headCols && used.rowIndex < rows)
    pieces.push({
      plan,
      top: used.rowIndex,
      bottom: Math.min(bottom, rows - 1),
      left: Math.max(headCols, used.columnIndex),
      right,
    });
  if (bottom >= rows)
    pieces.push({
      plan,
      top: Math.max(rows, used.rowIndex),
      bottom,
      left: used.columnIndex,
      right,
    });
  return { plan, used, facts, usedRows: used.rowCount, pieces };
}

const hiddenAs: Readonly<Record<string, "hidden" | "veryHidden">> = {
  Hidden: "hidden",
  VeryHidden: "veryHidden",
};

function mergedIn(used: Excel.Range, merged: Excel.RangeAreas | undefined): SheetFacts["merged"] {
  if (used.isNullObject) return [];
  return merged === undefined ? null : (rectanglesOf(merged) ?? null);
}
