import {
  type CellError,
  type CellValue,
  columnLetters,
  errors,
  isCellError,
  maxCols,
  maxRows,
} from "../../cells";
import { Area, Areas, type Value } from "../area";
import { toNumber } from "../coerce";
import { Matrix, Unsupported } from "../values";
import { type Match, placeByHalves, placeDescending, placeInOrder, placeOf } from "./find";
import type { Natives } from "./natives";
import { matrixOf } from "./read";

/** Functions that find a value, or a place, in a range. */
export function addLookup(to: Natives): void {
  to.add("MATCH", "s r n?", (wanted, among, type = 1) => {
    const find = type > 0 ? placeInOrder : placeDescending;
    const place = type === 0 ? placeOf(wanted, among, "wildcard") : find(wanted, among);
    return found(place, (at) => at + 1);
  });
  to.add("XMATCH", "s a n? n?", (wanted, among, match, search) =>
    found(xPlace(wanted, among, match, search), (at) => at + 1),
  );
  to.add("VLOOKUP", "s a n b?", (wanted, table, column, near = true) =>
    tableLookup(wanted, table, column, near, true),
  );
  to.add("HLOOKUP", "s a n b?", (wanted, table, row, near = true) =>
    tableLookup(wanted, table, row, near, false),
  );
  to.addSpreading("LOOKUP", "s a a?", lookup);
  to.addSpreading("XLOOKUP", "s a a r? n? n?", xlookup);
  to.addSpreading("INDEX", "a n? n? n?", index);
  to.addSpreading("OFFSET", "p i i s? s?", offset, { seeks: true });
  to.add("ADDRESS", "i i i? b? t?", address);
  to.add("AREAS", "p", (value) =>
    value instanceof Areas ? value.list.length : value instanceof Area ? 1 : errors.value,
  );
  to.add("ISREF", "p", (value) => value instanceof Area || value instanceof Areas);
  to.add("ROWS", "p", (range) => size(range, (each) => each.rows));
  to.add("COLUMNS", "p", (range) => size(range, (each) => each.cols));
}

function found<T>(place: number | CellError, then: (place: number) => T): T | CellError {
  if (typeof place !== "number") return place;
  return place < 0 ? errors.na : then(place);
}

function size(range: Value, read: (range: Area | Matrix) => number): CellValue {
  if (range instanceof Area || range instanceof Matrix) return read(range);
  return isCellError(range) ? range : range instanceof Areas ? errors.ref : 1;
}

/** The line of a table with a number, as a reference where the table is one. */
function line(table: Value, number: number, isRow: boolean): Area | Matrix | CellError {
  if (table instanceof Area) {
    const cached = lines(table, isRow);
    const known = cached.get(number);
    if (known) return known;
    const { grid, top, left, bottom, right } = table;
    const made = isRow
      ? new Area(grid, top + number, left, top + number, right)
      : new Area(grid, top, left + number, bottom, left + number);
    if (table.memo) {
      made.memo = { revision: -1, since: 0 };
      cached.set(number, made);
    }
    return made;
  }
  const matrix = matrixOf(table);
  if (isCellError(matrix)) return matrix;
  return isRow
    ? Matrix.of(1, matrix.cols, (_, c) => matrix.at(number, c))
    : Matrix.of(matrix.rows, 1, (r) => matrix.at(r, number));
}

/** The lines of shared tables, so that their indexes are kept too. */
const knownLines = new WeakMap<Area, [Map<number, Area>, Map<number, Area>]>();

function lines(table: Area, isRow: boolean): Map<number, Area> {
  let pair = knownLines.get(table);
  if (!pair) {
    pair = [new Map(), new Map()];
    if (table.memo) knownLines.set(table, pair);
  }
  return pair[isRow ? 0 : 1];
}

function tableLookup(
  wanted: CellValue,
  table: Value,
  number: number,
  near: boolean,
  byColumn: boolean,
): CellValue {
  const shape = table instanceof Area ? table : matrixOf(table);
  if (isCellError(shape)) return shape;
  if (!(table instanceof Area) && shape.rows * shape.cols === 1)
    return typeof shape.at(0, 0) === "string" ? errors.value : errors.na;
  const at = Math.trunc(number) - 1;
  if (at >= (byColumn ? shape.cols : shape.rows)) return errors.ref;
  const keys = line(table, 0, !byColumn);
  if (isCellError(keys)) return keys;
  const place = near ? placeInOrder(wanted, keys) : placeOf(wanted, keys, "wildcard");
  return found(place, (i) =>
    at < 0 ? errors.value : byColumn ? shape.at(i, at) : shape.at(at, i),
  );
}

function lookup(wanted: CellValue, among: Value, results?: Value): Value {
  const matrix = matrixOf(among);
  if (isCellError(matrix)) return matrix;
  const byRow = matrix.cols > matrix.rows;
  const isLine = matrix.cols === 1 || matrix.rows === 1;
  const keys = results === undefined || !isLine ? line(among, 0, byRow) : among;
  if (isCellError(keys)) return keys;
  const place = placeInOrder(wanted, keys);
  return found(place, (i) => {
    if (results === undefined)
      return byRow ? matrix.at(matrix.rows - 1, i) : matrix.at(i, matrix.cols - 1);
    const from = matrixOf(results);
    if (isCellError(from)) return from;
    if (from.rows > 1 && from.cols > 1) return errors.na;
    return i < from.data.length ? (from.data[i] ?? null) : errors.na;
  });
}

function xPlace(
  wanted: CellValue,
  among: Value,
  match: number | undefined = 0,
  search: number | undefined = 1,
): number | CellError {
  const kinds: Record<number, Match> = {
    0: "exact",
    1: "at least",
    2: "wildcard",
    [-1]: "at most",
  };
  if (match === 3) throw new Unsupported("a look-up by regular expression");
  const kind = kinds[match];
  if (kind === undefined || ![1, -1, 2, -2].includes(search)) return errors.value;
  if (isCellError(wanted)) return wanted;
  if (isCellError(among)) return among;
  const shape = shapeOf(among);
  if (shape.rows > 1 && shape.cols > 1) return errors.value;
  // A blank that is looked for finds a blank.
  if (wanted === null && kind === "exact" && among instanceof Area) {
    const blank = among.matrix().data.indexOf(null);
    if (blank >= 0) return blank;
  }
  if (Math.abs(search) === 1) return placeOf(wanted, among, kind, search === -1);
  if (kind === "wildcard") return errors.value;
  return placeByHalves(wanted, among, kind, search === -2);
}

function xlookup(
  wanted: CellValue,
  among: Value,
  results: Value,
  otherwise?: Value,
  match?: number,
  search?: number,
): Value {
  const place = xPlace(wanted, among, match, search);
  if (typeof place !== "number") return place;
  if (place < 0) return otherwise === undefined || otherwise === null ? errors.na : otherwise;
  const keys = shapeOf(among);
  const isColumn = keys.cols === 1 && (keys.rows > 1 || shapeOf(results).cols === 1);
  const from = shapeOf(results);
  if (isColumn ? from.rows !== keys.rows : from.cols !== keys.cols) return errors.value;
  return line(results, place, isColumn);
}

function shapeOf(value: Value): { rows: number; cols: number } {
  return value instanceof Area || value instanceof Matrix ? value : { rows: 1, cols: 1 };
}

/** A cell, row or column of a reference or array; 0 stands for all of them. */
function index(from: Value, first = 1, second?: number, which = 1): Value {
  let source = from;
  if (source instanceof Areas) {
    const area = source.list[Math.trunc(which) - 1];
    if (!area) return errors.ref;
    source = area;
  }
  if (isCellError(source)) return source;
  if (!(from instanceof Areas) && Math.trunc(which) !== 1) return errors.ref;
  const shape = source instanceof Area || source instanceof Matrix ? source : matrixOf(source);
  if (isCellError(shape)) return shape;
  // With one number, a single row is counted along its columns.
  const isLine = second === undefined && shape.rows === 1 && shape.cols > 1;
  const row = Math.trunc(isLine ? 0 : first);
  const col = Math.trunc(isLine ? first : (second ?? (shape.cols === 1 ? 1 : 0)));
  if (row < 0 || col < 0) return errors.value;
  if (row > shape.rows || col > shape.cols) return errors.ref;
  const top = row === 0 ? 0 : row - 1;
  const left = col === 0 ? 0 : col - 1;
  const bottom = row === 0 ? shape.rows - 1 : top;
  const right = col === 0 ? shape.cols - 1 : left;
  if (shape instanceof Area)
    return new Area(
      shape.grid,
      shape.top + top,
      shape.left + left,
      shape.top + bottom,
      shape.left + right,
    );
  if (top === bottom && left === right) return shape.at(top, left);
  return Matrix.of(bottom - top + 1, right - left + 1, (r, c) => shape.at(top + r, left + c));
}

/** A reference moved by rows and columns, of another size where one is given. */
function offset(
  from: Value,
  rows: number,
  cols: number,
  height?: CellValue,
  width?: CellValue,
): Value {
  if (!(from instanceof Area)) return isCellError(from) ? from : errors.value;
  const size = (given: CellValue | undefined, own: number) => {
    const read = toNumber(given ?? own);
    // Part of a cell is the cell.
    return typeof read === "number" ? Math.trunc(read) || Math.sign(read) : read;
  };
  const tall = size(height, from.rows);
  const wide = size(width, from.cols);
  if (typeof tall !== "number") return tall;
  if (typeof wide !== "number") return wide;
  if (tall === 0 || wide === 0) return errors.ref;
  // A size below zero counts upwards or to the left.
  const top = from.top + rows + (tall < 0 ? tall + 1 : 0);
  const left = from.left + cols + (wide < 0 ? wide + 1 : 0);
  const bottom = top + Math.abs(tall) - 1;
  const right = left + Math.abs(wide) - 1;
  if (top < 0 || left < 0 || bottom >= maxRows || right >= maxCols) return errors.ref;
  return new Area(from.grid, top, left, bottom, right);
}

function address(row: number, col: number, kind = 1, isA1 = true, sheet?: string): CellValue {
  if (row < 1 || col < 1 || row > maxRows || col > maxCols || kind < 1 || kind > 4)
    return errors.value;
  const [fixesRow, fixesCol] = [kind === 1 || kind === 2, kind === 1 || kind === 3];
  const part = (fixed: boolean, letter: string, n: number) =>
    letter + (fixed ? String(n) : `[${n}]`);
  const text = isA1
    ? `${fixesCol ? "$" : ""}${columnLetters(col - 1)}${fixesRow ? "$" : ""}${row}`
    : part(fixesRow, "R", row) + part(fixesCol, "C", col);
  if (sheet === undefined) return text;
  const quoted =
    /^(\[[\w.]+\])?[A-Za-z_][\w.]*$/.test(sheet) || sheet === ""
      ? sheet
      : `'${sheet.replace(/'/g, "''")}'`;
  return `${quoted}!${text}`;
}
