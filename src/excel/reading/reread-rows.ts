import { maxRows } from "../../cells";
import { sheetGone } from "../host-error";
import { type Book, run } from "../run";
import type { WorkbookReading } from "../types";
import { extentOf } from "./extent";
import { type Piece, readPieces, type SheetPlan } from "./pieces";
import { SheetCells } from "./sheet-cells";

/** Up to so many rows are read together with the sheet's new shape. */
const rowsAtOnce = 500;

/**
 * Reads some rows of one sheet again after an edit, rows from 0, both ends included; everything
 * else is kept from the reading. It waits until the user has left the cell being edited. Results
 * elsewhere that follow from the edit are not read: after an edit on a sheet that others look up,
 * such as Boxes or Job, read the workbook again.
 */
export function rereadRows(
  reading: WorkbookReading,
  sheet: string,
  firstRow: number,
  lastRow: number,
): Promise<WorkbookReading> {
  const last = Math.min(lastRow, maxRows - 1);
  return run((book) => reread(book, reading, sheet, firstRow, last), { waitsForEdit: true });
}

async function reread(
  book: Book,
  reading: WorkbookReading,
  sheet: string,
  first: number,
  last: number,
): Promise<WorkbookReading> {
  const proxy = book.sheets.getItemOrNullObject(sheet);
  proxy.load("name");
  const used = proxy.getUsedRangeOrNullObject(true);
  used.load("rowIndex,columnIndex,rowCount,columnCount");
  const count = last - first + 1;
  const rows =
    count <= rowsAtOnce
      ? used.getIntersectionOrNullObject(proxy.getRange(`${first + 1}:${last + 1}`))
      : undefined;
  rows?.load("rowIndex,columnIndex,values,formulas,valueTypes");
  await book.sync();
  if (proxy.isNullObject) throw sheetGone(sheet);

  const { bottom, right } = extentOf(used);
  const before = reading.file.sheets.find((grid) => grid.name === proxy.name);
  const known = before instanceof SheetCells ? before : undefined;
  const cells = new SheetCells(proxy.name, bottom + 1, right + 1, known);
  cells.clear(first, last);
  if (rows && !rows.isNullObject) cells.put({ top: rows.rowIndex, left: rows.columnIndex }, rows);
  if (!rows && bottom >= first && !used.isNullObject) {
    const plan: SheetPlan = { proxy, cells, rowBytes: 60 * (right + 1) };
    const top = Math.max(first, used.rowIndex);
    const piece: Piece = {
      plan,
      top,
      bottom: Math.min(last, bottom),
      left: used.columnIndex,
      right,
    };
    if (piece.bottom >= top) await readPieces(book, [piece], () => {});
  }
  const sheets = before
    ? reading.file.sheets.map((grid) => (grid === before ? cells : grid))
    : [...reading.file.sheets, cells];
  return { ...reading, file: { ...reading.file, sheets }, trips: book.trips };
}
