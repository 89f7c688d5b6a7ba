import { columnName, parseRange, type RangeRef, toRef } from "../../workbook";

export const maxRows = 1_048_576;
export const maxCols = 16_384;
/** Longest address a call may carry. */
export const longestAddress = 8192;

export function addressTooLong(text: string): string {
  return `The address has ${text.length} characters; at most ${longestAddress} are taken.`;
}

export interface Address {
  /** Name before the exclamation mark, without its quotes; null where there is none. */
  readonly sheet: string | null;
  readonly range: RangeRef;
}

/**
 * An address such as "A1", "B2:C9", "A:C", "2:5" or "'Box list'!$A$1", or null for any other text.
 */
export function parseAddress(text: string): Address | null {
  const mark = text.lastIndexOf("!");
  const range = parseCells(text.slice(mark + 1).trim());
  if (range === null) return null;
  if (mark < 0) return { sheet: null, range };
  const name = text.slice(0, mark).trim();
  if (name === "") return null;
  const quoted = /^'((?:[^']|'')+)'$/.exec(name);
  if (quoted) return { sheet: (quoted[1] as string).replaceAll("''", "'"), range };
  return name.includes("'") ? null : { sheet: name, range };
}

function parseCells(text: string): RangeRef | null {
  const columns = /^\$?([A-Za-z]{1,3}):\$?([A-Za-z]{1,3})$/.exec(text);
  const rows = /^\$?(\d{1,7}):\$?(\d{1,7})$/.exec(text);
  try {
    if (columns) {
      const { left, right } = parseRange(`${columns[1]}1:${columns[2]}1`);
      return { top: 0, left, bottom: maxRows - 1, right };
    }
    if (rows) {
      const { top, bottom } = parseRange(`A${rows[1]}:A${rows[2]}`);
      return { top, left: 0, bottom, right: maxCols - 1 };
    }
    if (!/^\$?[A-Za-z]{1,3}\$?\d{1,7}(:\$?[A-Za-z]{1,3}\$?\d{1,7})?$/.test(text)) return null;
    return parseRange(text);
  } catch {
    return null;
  }
}

/** "B2:C9", "B2" for one cell, "A:C" for whole columns, "2:5" for whole rows. */
export function cellsText(range: RangeRef): string {
  const { top, left, bottom, right } = range;
  const isTall = top === 0 && bottom === maxRows - 1;
  const isWide = left === 0 && right === maxCols - 1;
  if (isTall && !isWide) return `${columnName(left)}:${columnName(right)}`;
  if (isWide && !isTall) return `${top + 1}:${bottom + 1}`;
  const first = toRef(top, left);
  const last = toRef(bottom, right);
  return first === last ? first : `${first}:${last}`;
}

/** The name as a reference writes it: in quotes unless it is a plain word. */
export function sheetPrefix(name: string): string {
  const isPlain =
    /^[A-Za-z_][A-Za-z0-9_.]*$/.test(name) &&
    !/^[A-Za-z]{1,3}\d+$/.test(name) &&
    !/^[Rr]?\d*[Cc]?\d*$/.test(name);
  return isPlain ? `${name}!` : `'${name.replaceAll("'", "''")}'!`;
}
