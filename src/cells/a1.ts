import { around, maxCols, maxRows, type Rectangle } from "./rectangle";

export interface CellRef {
  readonly row: number;
  readonly col: number;
}

/** "A", "B" … "AA" for columns 0, 1 … 26. */
export function columnLetters(col: number): string {
  let letters = "";
  for (let n = col + 1; n > 0; n = Math.floor((n - 1) / 26))
    letters = String.fromCharCode(65 + ((n - 1) % 26)) + letters;
  return letters;
}

/** 0 for "A", 26 for "aa". */
export function columnIndex(letters: string): number {
  let number = 0;
  for (const letter of letters.toUpperCase()) number = number * 26 + letter.charCodeAt(0) - 64;
  return number - 1;
}

/** "B2" for row 1, column 1. */
export function cellName(row: number, col: number): string {
  return columnLetters(col) + (row + 1);
}

/**
 * The place a plain reference such as "B2" names, as row * maxCols + col, or -1 when it is none;
 * the reference may be part of a longer text.
 * One number and no object, because a sheet has hundreds of thousands of them.
 */
export function packedRef(ref: string, from = 0, to = ref.length): number {
  let at = from;
  let col = 0;
  for (; at < to; at++) {
    const letter = ref.charCodeAt(at) & ~32;
    if (letter < 65 || letter > 90) break;
    col = col * 26 + letter - 64;
  }
  if (at === from || at - from > 3 || col > maxCols || at === to) return -1;
  let row = 0;
  for (; at < to; at++) {
    const digit = ref.charCodeAt(at) - 48;
    if (digit < 0 || digit > 9 || row > maxRows) return -1;
    row = row * 10 + digit;
  }
  if (row < 1 || row > maxRows) return -1;
  return (row - 1) * maxCols + col - 1;
}

/** "B2" or "$B$2" to numbers. Throws a RangeError for anything else. */
export function parseCell(ref: string): CellRef {
  const packed = packedRef(ref.replaceAll("$", ""));
  if (packed < 0) throw new RangeError(`"${ref}" is not a cell reference such as B2.`);
  return { row: Math.floor(packed / maxCols), col: packed % maxCols };
}

const line = String.raw`\$?([A-Z]{1,3})?\$?(\d{1,7})?`;
const rectangle = new RegExp(`^${line}(:${line})?$`, "i");

/**
 * "A1:B9", "B2" for one cell, "A:C" and "2:5" for whole columns and rows; undefined for any other
 * text. Top left and bottom right, whatever way round it was written.
 */
export function rectangleOf(text: string): Rectangle | undefined {
  const [, col, row, range, lastCol, lastRow] = rectangle.exec(text) ?? [];
  const isCell = range === undefined;
  // "A1:C" is no rectangle, and neither is "A" or "2" alone.
  if (isCell ? !(col && row) : !col !== !lastCol || !row !== !lastRow || !(col || row))
    return undefined;
  const first = packedRef(`${col ?? "A"}${row ?? 1}`);
  const last = isCell
    ? first
    : packedRef(`${lastCol ?? columnLetters(maxCols - 1)}${lastRow ?? maxRows}`);
  return first < 0 || last < 0 ? undefined : around(oneCell(first), oneCell(last));
}

/** The same for text that must be a rectangle. Throws a RangeError for anything else. */
export function parseRectangle(text: string): Rectangle {
  const found = rectangleOf(text);
  if (!found) throw new RangeError(`"${text}" is not a range such as A1:B9.`);
  return found;
}

function oneCell(packed: number): Rectangle {
  const [row, col] = [Math.floor(packed / maxCols), packed % maxCols];
  return { top: row, left: col, bottom: row, right: col };
}

/** "A1:B9"; one cell gives "B2". */
export function rectangleText({ top, left, bottom, right }: Rectangle): string {
  const first = cellName(top, left);
  const last = cellName(bottom, right);
  return first === last ? first : `${first}:${last}`;
}

/** Like rectangleText, with "A:C" for whole columns and "2:5" for whole rows. */
export function addressText(area: Rectangle): string {
  const { top, left, bottom, right } = area;
  const isTall = top === 0 && bottom === maxRows - 1;
  const isWide = left === 0 && right === maxCols - 1;
  if (isTall && !isWide) return `${columnLetters(left)}:${columnLetters(right)}`;
  if (isWide && !isTall) return `${top + 1}:${bottom + 1}`;
  return rectangleText(area);
}

/** "$A$1:$B$9" for "A1:B9", "$A:$C" for "A:C". */
export function absoluteText(address: string): string {
  return address.replace(/[A-Z]+|\d+/g, "$$$&");
}
