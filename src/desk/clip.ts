import type { Place } from "../cells";
import type { Extent } from "./extent";
import type { WorkbookHost } from "./host";
import { readBlock, writeBlock } from "./text/block";
import { shifted } from "./text/shift";

/** What was last copied: the text given to the clipboard, and where its formulas come from. */
export interface Clip {
  readonly text: string;
  readonly rows: readonly (readonly CopiedCell[])[];
}

interface CopiedCell {
  readonly row: number;
  readonly col: number;
  readonly content: string;
}

/** The shown cells of an area, for the clipboard as text and for this workbook with formulas. */
export function clipOf(book: WorkbookHost, area: Place, extent: Extent): Clip {
  const shown: string[][] = [];
  const rows: CopiedCell[][] = [];
  for (let row = area.top; row <= area.bottom; row++) {
    const texts: string[] = [];
    const cells: CopiedCell[] = [];
    for (let col = area.left; col <= area.right; col++) {
      if (!extent.isShown(row, col)) continue;
      texts.push(book.text(area.sheet, row, col));
      cells.push({ row, col, content: book.typedText(area.sheet, row, col) });
    }
    if (cells.length === 0) continue;
    shown.push(texts);
    rows.push(cells);
  }
  return { text: writeBlock(shown), rows };
}

/**
 * The texts to enter for what is pasted. A copy from this workbook brings its formulas, each moved
 * to its new cell; one copied cell fills the whole selection.
 */
export function blockAt(text: string, clip: Clip | null, area: Place, extent: Extent): string[][] {
  const isOwn = clip !== null && sameText(clip.text, text);
  const source = isOwn ? clip.rows : readBlock(text).map((row) => row.map((content) => content));
  const only = source.length === 1 && source[0]?.length === 1;
  const height = only ? Math.min(area.bottom, extent.rows - 1) - area.top + 1 : source.length;
  return Array.from({ length: height }, (_, r) => {
    const line = source[only ? 0 : r] ?? [];
    const width = only ? Math.min(area.right, extent.cols - 1) - area.left + 1 : line.length;
    return Array.from({ length: width }, (_, c) => {
      const cell = line[only ? 0 : c];
      if (cell === undefined || typeof cell === "string") return cell ?? "";
      return shifted(cell.content, cell, { row: area.top + r, col: area.left + c });
    });
  });
}

/** The contents of the first row of an area, or of its first column, for the rest of it. */
export function filled(book: WorkbookHost, area: Place, isDown: boolean): string[][] {
  const { sheet, top, left, bottom, right } = area;
  const [row, col] = [top + Number(isDown), left + Number(!isDown)];
  return Array.from({ length: bottom - row + 1 }, (_, r) =>
    Array.from({ length: right - col + 1 }, (_, c) => {
      const to = { row: row + r, col: col + c };
      const from = isDown ? { ...to, row: top } : { ...to, col: left };
      return shifted(book.typedText(sheet, from.row, from.col), from, to);
    }),
  );
}

/** Clipboards may end lines their own way. */
function sameText(a: string, b: string): boolean {
  return a.replaceAll("\r\n", "\n") === b.replaceAll("\r\n", "\n");
}
