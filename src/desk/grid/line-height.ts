import type { Desk } from "../desk";
import { columnWidth, padding } from "./columns";
import type { Line } from "./line";
import { rowHeight } from "./theme";

/** Width of a letter of a heading and the height of a line of one, px. */
const letter = 8.2;
const lineOfText = 17;
const mostLines = 4;

/** More rows than these below the frozen ones are not measured. */
const mostMeasured = 200;

/** The height of a row whose cells wrap: as their longest text needs, below the frozen rows of short sheets alone. */
export function lineHeight(desk: Desk, line: Line | undefined, isFrozen: boolean): number {
  const { sheet, book } = desk;
  const isMeasured = isFrozen || (sheet.rowCount <= mostMeasured && !sheet.hasMerges);
  if (!line || !isMeasured) return rowHeight;
  let lines = 1;
  for (let col = 0; col < sheet.colCount; col++) {
    if (sheet.hiddenCols.has(col) || !book.styleAt(sheet.name, line.row, col).wrap) continue;
    const room = Math.floor((columnWidth(sheet, col) - padding) / letter);
    lines = Math.max(lines, linesOf(book.text(sheet.name, line.row, col), room));
  }
  return rowHeight + (Math.min(mostLines, lines) - 1) * lineOfText;
}

/** Lines that a text takes when its words are laid into lines of so many letters. */
function linesOf(text: string, room: number): number {
  let lines = 1;
  let used = 0;
  for (const word of text.split(/\s+/)) {
    if (used > 0 && used + 1 + word.length > room) {
      lines++;
      used = word.length;
    } else used += (used > 0 ? 1 : 0) + word.length;
  }
  return lines;
}
