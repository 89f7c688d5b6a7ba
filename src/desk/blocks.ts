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

/** Repeats the first row of the selection down it, or its first column; of a single one that before it. */
export function fill(desk: Desk, way: "down" | "right"): void {
  const { sheet, top, left, bottom, right } = desk.area;
  const isDown = way === "down";
  const row = isDown && top === bottom ? top - 1 : top;
  const col = !isDown && left === right ? left - 1 : left;
  if (row < 0 || col < 0) return;
  const texts = filled(desk.book, { sheet, top: row, left: col, bottom, right }, isDown);
  desk.attempt(() =>
    desk.book.userEntersBlock(sheet, row + Number(isDown), col + Number(!isDown), texts),
  );
}
