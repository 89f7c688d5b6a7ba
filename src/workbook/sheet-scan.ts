import { damaged } from "./error";
import { RowCursor } from "./row-cursor";
import { prefixOf, scanXml, type Tag } from "./xml";

/** Where an element stands: [start, openEnd) is its opening tag, [closeStart, end) its closing one. */
export interface Span {
  readonly tag: Tag;
  readonly start: number;
  readonly openEnd: number;
  closeStart: number;
  end: number;
}

export interface CellSpan extends Span {
  readonly col: number;
  readonly children: Span[];
}

export interface RowSpan extends Span {
  readonly row: number;
  readonly cells: CellSpan[];
}

/** The places in a sheet's text that an edit of its cells needs. */
export interface SheetScan {
  readonly prefix: string;
  readonly sheetData: Span;
  readonly dimension: Span | null;
  /** Numbers and starts of all rows, in file order. */
  readonly rowNumbers: readonly number[];
  readonly rowStarts: readonly number[];
  /** The wanted rows in full. */
  readonly rows: readonly RowSpan[];
}

/** Finds the wanted rows with their cells, and the starts of all others. */
export function scanSheet(
  part: string,
  text: string,
  maxDepth: number,
  isWanted: (row: number) => boolean,
): SheetScan {
  const cursor = new RowCursor(part);
  const rowNumbers: number[] = [];
  const rowStarts: number[] = [];
  const rows: RowSpan[] = [];
  let prefix: string | undefined;
  let sheetData: Span | null = null;
  let dimension: Span | null = null;
  let inSheetData = false;
  let row: RowSpan | undefined;
  let cell: CellSpan | undefined;
  let child: Span | undefined;
  /** Depth below sheetData; rows stand at 1. */
  let depth = 0;

  scanXml(part, text, maxDepth, {
    open(tag, start, openEnd) {
      const span = { tag, start, openEnd, closeStart: openEnd, end: openEnd };
      if (!inSheetData) {
        prefix ??= prefixOf(tag.name);
        if (tag.name === `${prefix}dimension`) dimension = span;
        else if (sheetData === null && tag.name === `${prefix}sheetData`) {
          sheetData = span;
          inSheetData = true;
          depth = 0;
        }
        return;
      }
      depth++;
      if (depth === 1 && tag.name === `${prefix}row`) {
        const index = cursor.nextRow(tag.attributes.r);
        rowNumbers.push(index);
        rowStarts.push(start);
        row = isWanted(index) ? { ...span, row: index, cells: [] } : undefined;
        if (row !== undefined) rows.push(row);
      } else if (row !== undefined && depth === 2 && tag.name === `${prefix}c`) {
        cell = { ...span, col: cursor.nextCol(tag.attributes.r), children: [] };
        row.cells.push(cell);
      } else if (cell !== undefined && depth === 3) {
        child = span;
        cell.children.push(child);
      }
    },
    close(_, start, end) {
      if (!inSheetData) return;
      const ended = [sheetData, row, cell, child][depth];
      if (ended) {
        if (!ended.tag.isSelfClosing) ended.closeStart = start;
        ended.end = end;
      }
      if (depth === 0) inSheetData = false;
      if (depth === 1) row = undefined;
      if (depth === 2) cell = undefined;
      if (depth === 3) child = undefined;
      depth--;
    },
  });
  if (sheetData === null) throw damaged(part, "it has no cell data");
  return { prefix: prefix ?? "", sheetData, dimension, rowNumbers, rowStarts, rows };
}
