import { blockAt, clipOf, filled } from "./clip";
import type { Desk } from "./desk";
import { mostCols, mostRows } from "./extent";

/** The selected cells as text for the clipboard. */
export function copyBlock(desk: Desk): string {
  desk.clip = clipOf(desk.book, desk.area, desk.extent);
  return desk.clip.text;
}

/** Enters a block of text from the active cell on, and selects it. */
export function pasteBlock(desk: Desk, text: string): void {
  const { area, book } = desk;
  const rows = blockAt(text, desk.clip, area, desk.extent);
  const width = Math.max(...rows.map((row) => row.length));
  const bottom = area.top + rows.length - 1;
  const right = area.left + width - 1;
  if (bottom >= mostRows || right >= mostCols) {
    desk.messages.add(
      "error",
      `The block of ${rows.length} rows and ${width} columns reaches outside the grid: paste it further up or left.`,
    );
    return;
  }
  desk.attempt(() => {
    book.userEntersBlock(area.sheet, area.top, area.left, rows);
    desk.reach(bottom, right);
    desk.selectArea(area.top, area.left, bottom, right);
  });
}

/** Repeats the first row of the selection in the rows below it, or the row above a single one. */
export function fillDown(desk: Desk): void {
  const { top, bottom, ...sides } = desk.area;
  const from = top === bottom ? top - 1 : top;
  if (from < 0) return;
  const rows = filled(desk.book, { ...sides, top: from, bottom: from }, bottom - from);
  desk.attempt(() => desk.book.userEntersBlock(sides.sheet, from + 1, sides.left, rows));
}
