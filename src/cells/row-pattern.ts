import { maxCols, maxRows } from "./rectangle";

const quote = 34;
const apostrophe = 39;
const open = 91;
const close = 93;
const colon = 58;
const dollar = 36;

/** Letters, digits, $ _ . \ ? and everything beyond ASCII: what names and references consist of. */
const wordCodes = new Uint8Array(128);
for (const sign of "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789$_.\\?")
  wordCodes[sign.charCodeAt(0)] = 1;

/** Where the scan of one reference ended, and what it read. Reused to spare allocations. */
let end = 0;
let isFixed = false;

/** Where relative row numbers stand, three numbers each: start, end, and what to add to the own row. */
let places: number[] = [];

/**
 * Where the relative row numbers of a formula stand, for a look at whether another is the same one
 * copied down: start, end and 0-based row less the own row, for each in turn.
 */
export function rowPlaces(formula: string, row: number, col: number): readonly number[] {
  rowPattern(formula, row, col);
  return places;
}

/**
 * The formula with each reference written relative to its cell, such as `RC[-1]*R2C5`: equal for
 * formulas copied down or across. Rows and columns are 0-based; text in quotes stays as it is.
 */
export function rowPattern(formula: string, row: number, col: number): string {
  const length = formula.length;
  places = [];
  let out = "";
  let copied = 0;
  let i = 0;
  while (i < length) {
    const code = formula.charCodeAt(i);
    if (code === quote || code === apostrophe) i = afterQuoted(formula, i, code);
    else if (code === open) i = afterBrackets(formula, i);
    else if (code > 127 || wordCodes[code] === 1) {
      const start = i;
      const text = reference(formula, start, row, col);
      if (text === undefined) i = afterWord(formula, start);
      else {
        out += formula.slice(copied, start) + text;
        i = end;
        copied = end;
      }
    } else i++;
  }
  return copied === 0 ? formula : out + formula.slice(copied);
}

function reference(text: string, at: number, row: number, col: number): string | undefined {
  const column = readColumn(text, at);
  if (column >= 0) {
    const fixed = isFixed;
    const afterColumn = end;
    const line = readRow(text, end);
    if (line >= 0) {
      if (!atEnd(text, end)) return undefined;
      notePlace(afterColumn, line, row);
      return `R${part(line, isFixed, row)}C${part(column, fixed, col)}`;
    }
    if (text.charCodeAt(afterColumn) !== colon) return undefined;
    const last = readColumn(text, afterColumn + 1);
    if (last < 0 || !atEnd(text, end)) return undefined;
    return `C${part(column, fixed, col)}:C${part(last, isFixed, col)}`;
  }
  const first = readRow(text, at);
  if (first < 0 || text.charCodeAt(end) !== colon) return undefined;
  const fixed = isFixed;
  const afterFirst = end;
  const last = readRow(text, end + 1);
  if (last < 0 || !atEnd(text, end)) return undefined;
  if (!fixed) places.push(at, afterFirst, first - row);
  notePlace(afterFirst + 1, last, row);
  return `R${part(first, fixed, row)}:R${part(last, isFixed, row)}`;
}

function notePlace(start: number, index: number, row: number): void {
  if (!isFixed) places.push(start, end, index - row);
}

function part(index: number, fixed: boolean, own: number): string | number {
  if (fixed) return index + 1;
  return index === own ? "" : `[${index - own}]`;
}

/** 0-based column of the letters at a place, or -1; sets `end` and `isFixed`. */
function readColumn(text: string, at: number): number {
  let i = at;
  const fixed = text.charCodeAt(i) === dollar;
  if (fixed) i++;
  let column = 0;
  const start = i;
  for (; i - start < 4; i++) {
    const letter = text.charCodeAt(i) & ~32;
    // The mask also turns some signs into letters, so the code itself must be above "@".
    if (letter < 65 || letter > 90 || text.charCodeAt(i) < 65) break;
    column = column * 26 + letter - 64;
  }
  if (i === start || i - start > 3 || column > maxCols) return -1;
  end = i;
  isFixed = fixed;
  return column - 1;
}

/** 0-based row of the digits at a place, or -1; sets `end` and `isFixed`. */
function readRow(text: string, at: number): number {
  let i = at;
  const fixed = text.charCodeAt(i) === dollar;
  if (fixed) i++;
  let row = 0;
  const start = i;
  for (; i - start < 8; i++) {
    const digit = text.charCodeAt(i) - 48;
    if (!(digit >= 0 && digit <= 9)) break;
    row = row * 10 + digit;
  }
  if (i === start || row < 1 || row > maxRows) return -1;
  end = i;
  isFixed = fixed;
  return row - 1;
}

/** Whether a reference may end here: not inside a longer word, a sheet, function or table name. */
function atEnd(text: string, at: number): boolean {
  if (at >= text.length) return true;
  const code = text.charCodeAt(at);
  if (code > 127 || wordCodes[code] === 1) return false;
  return code !== 33 && code !== 40 && code !== open;
}

function afterWord(text: string, at: number): number {
  let i = at + 1;
  while (i < text.length) {
    const code = text.charCodeAt(i);
    if (code <= 127 && wordCodes[code] === 0) break;
    i++;
  }
  return i;
}

function afterQuoted(text: string, at: number, mark: number): number {
  let i = at + 1;
  while (i < text.length) {
    if (text.charCodeAt(i) === mark) {
      if (text.charCodeAt(i + 1) !== mark) return i + 1;
      i++;
    }
    i++;
  }
  return i;
}

/** Past the brackets of a table reference or a workbook index; an apostrophe escapes one sign. */
function afterBrackets(text: string, at: number): number {
  let depth = 0;
  for (let i = at; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (code === apostrophe) i++;
    else if (code === open) depth++;
    else if (code === close && --depth === 0) return i + 1;
  }
  return text.length;
}
