/** Cell references as text and as 0-based numbers, within the sheet size of the format. */

export const MAX_ROWS = 1_048_576;
export const MAX_COLS = 16_384;

export interface CellRef {
  readonly row: number;
  readonly col: number;
}

/** Both corners are part of the range; top left and bottom right whatever way round it was written. */
export interface RangeRef {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

/** 0 is "A", 26 is "AA". */
export function columnName(col: number): string {
  let name = "";
  for (let left = col + 1; left > 0; left = Math.floor((left - 1) / 26)) {
    name = String.fromCharCode(65 + ((left - 1) % 26)) + name;
  }
  return name;
}

/** (1, 1) is "B2". */
export function toRef(row: number, col: number): string {
  return columnName(col) + (row + 1);
}

/**
 * The place a plain reference such as "B2" names, as row * MAX_COLS + col, or -1 when it is none;
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
  if (at === from || at - from > 3 || col > MAX_COLS || at === to) return -1;
  let row = 0;
  for (; at < to; at++) {
    const digit = ref.charCodeAt(at) - 48;
    if (digit < 0 || digit > 9 || row > MAX_ROWS) return -1;
    row = row * 10 + digit;
  }
  if (row < 1 || row > MAX_ROWS) return -1;
  return (row - 1) * MAX_COLS + col - 1;
}

/** "B2" or "$B$2" to numbers. Throws a RangeError for anything else. */
export function parseRef(ref: string): CellRef {
  const packed = packedRef(ref.replaceAll("$", ""));
  if (packed < 0) throw new RangeError(`"${ref}" is not a cell reference such as B2.`);
  return { row: Math.floor(packed / MAX_COLS), col: packed % MAX_COLS };
}

/** "A1:B9", or "B2" for a range of one cell. Throws a RangeError for anything else. */
export function parseRange(ref: string): RangeRef {
  const [first, second, ...more] = ref.split(":");
  if (first === undefined || more.length > 0) {
    throw new RangeError(`"${ref}" is not a range such as A1:B9.`);
  }
  const a = parseRef(first);
  const b = second === undefined ? a : parseRef(second);
  return {
    top: Math.min(a.row, b.row),
    left: Math.min(a.col, b.col),
    bottom: Math.max(a.row, b.row),
    right: Math.max(a.col, b.col),
  };
}

/** The reverse of parseRange; one cell gives "B2". */
export function rangeText(range: RangeRef): string {
  const first = toRef(range.top, range.left);
  const last = toRef(range.bottom, range.right);
  return first === last ? first : `${first}:${last}`;
}

/** Like rangeText, with "$" before rows and columns. */
export function absoluteText({ top, left, bottom, right }: RangeRef): string {
  const first = `$${columnName(left)}$${top + 1}`;
  const last = `$${columnName(right)}$${bottom + 1}`;
  return first === last ? first : `${first}:${last}`;
}
