import { type CellError, type CellValue, isCellError } from "../../cells";
import { Area, type Value } from "../area";
import { compare } from "../coerce";
import { placesOf } from "./places";
import { vectorOf } from "./read";
import { wildcard } from "./wildcard";

/** How a look-up takes a value for found. */
export type Match = "exact" | "wildcard" | "at most" | "at least";

/**
 * Place of a value in a row or column of values, counted from 0; -1 where it is not found.
 * "at most" takes the largest value that is not above the wanted one, "at least" the reverse.
 */
export function placeOf(
  wanted: CellValue,
  among: Value,
  match: Match,
  fromEnd = false,
): number | CellError {
  if (isCellError(wanted)) return wanted;
  if (wanted === null && (match === "at most" || match === "at least")) {
    const cells = vectorOf(among);
    return isCellError(cells) ? cells : nearest(null, cells, match, fromEnd);
  }
  const value = wanted ?? 0;
  const pattern = match === "wildcard" && typeof value === "string" ? wildcard(value) : undefined;
  const isPlain = match === "exact" || (match === "wildcard" && !pattern);
  if (isPlain && !fromEnd && typeof value !== "boolean" && isLine(among)) {
    const places = placesOf(among);
    const key = typeof value === "string" ? value.toLowerCase() : value;
    if (places) return places.get(key)?.[0] ?? -1;
  }
  const cells = vectorOf(among);
  if (isCellError(cells)) return cells;
  if (match === "at most" || match === "at least") return nearest(value, cells, match, fromEnd);
  const isIt = pattern
    ? (cell: CellValue) => typeof cell === "string" && pattern.test(cell)
    : (cell: CellValue) => cell !== null && sameKind(cell, value) && compare(cell, value) === 0;
  return fromEnd ? cells.findLastIndex(isIt) : cells.findIndex(isIt);
}

function isLine(among: Value): among is Area {
  return among instanceof Area && (among.rows === 1 || among.cols === 1);
}

/** A blank that is looked for stands after everything. */
function past(cell: CellValue, value: CellValue): number {
  return value === null ? -1 : compare(cell, value);
}

/** Numbers, texts and truth values stand in one order here, numbers first. */
function nearest(
  value: CellValue,
  cells: readonly CellValue[],
  match: "at most" | "at least",
  fromEnd: boolean,
): number {
  const side = match === "at most" ? 1 : -1;
  let best = -1;
  for (let i = 0; i < cells.length; i++) {
    const cell = cells[i] ?? null;
    if (cell === null || isCellError(cell) || past(cell, value) * side > 0) continue;
    const gain = best < 0 ? 1 : compare(cell, cells[best] ?? null) * side;
    if (gain > 0 || (gain === 0 && fromEnd)) best = i;
  }
  return best;
}

/**
 * Place of a value among values in order, by bisection as XLOOKUP and XMATCH do it: the first equal one
 * met, and of those beside it the first, or the last where they descend. Blanks stand after everything.
 */
export function placeByHalves(
  wanted: CellValue,
  among: Value,
  match: Match,
  descending: boolean,
): number | CellError {
  if (isCellError(wanted)) return wanted;
  const cells = vectorOf(among);
  if (isCellError(cells)) return cells;
  const side = descending ? -1 : 1;
  const order = (at: number) => {
    const cell = cells[at] ?? null;
    return cell === null ? 1 : past(cell, wanted) * side;
  };
  let low = 0;
  let high = cells.length - 1;
  while (low <= high) {
    let at = (low + high) >> 1;
    const way = order(at);
    if (way < 0) low = at + 1;
    else if (way > 0) high = at - 1;
    else {
      while (at - side >= 0 && at - side < cells.length && order(at - side) === 0) at -= side;
      return at;
    }
  }
  if (match === "exact") return -1;
  const place = (match === "at most") === descending ? low : high;
  return place < cells.length && (cells[place] ?? null) !== null ? place : -1;
}

/**
 * Place in ascending values as MATCH, LOOKUP and VLOOKUP find it: the last one that is not past the
 * wanted value, by bisection, so that values out of order give what a spreadsheet gives for them.
 * Cells of another kind are passed over.
 */
export function placeInOrder(wanted: CellValue, among: Value): number | CellError {
  if (isCellError(wanted)) return wanted;
  const cells = vectorOf(among);
  if (isCellError(cells)) return cells;
  const value = wanted ?? 0;
  const isKind = (at: number) => cells[at] !== null && sameKind(cells[at] ?? null, value);
  let low = -1;
  let high = cells.length;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    let at = middle;
    while (at < high && !isKind(at)) at++;
    if (at === high) {
      high = middle;
      continue;
    }
    const order = compare(cells[at] ?? null, value);
    if (order > 0) high = at === middle ? at : middle;
    else if (order < 0) low = at;
    else {
      let last = at;
      while (last + 1 < cells.length && isKind(last + 1) && compare(cells[last + 1]!, value) === 0)
        last++;
      return last;
    }
  }
  while (low >= 0 && !isKind(low)) low--;
  return low;
}

/** Place in descending values: the last before the first that is below the wanted one. */
export function placeDescending(wanted: CellValue, among: Value): number | CellError {
  if (isCellError(wanted)) return wanted;
  const cells = vectorOf(among);
  if (isCellError(cells)) return cells;
  const value = wanted ?? 0;
  let place = -1;
  for (const [i, cell] of cells.entries()) {
    if (cell === null || !sameKind(cell, value)) continue;
    const order = compare(cell, value);
    if (order < 0) break;
    place = i;
    if (order === 0) break;
  }
  return place;
}

function sameKind(a: CellValue, b: CellValue): boolean {
  return typeof a === typeof b && !isCellError(a);
}
