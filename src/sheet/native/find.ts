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
  if (match === "exact" || match === "wildcard") {
    const isIt = pattern
      ? (cell: CellValue) => typeof cell === "string" && pattern.test(cell)
      : (cell: CellValue) => cell !== null && sameKind(cell, value) && compare(cell, value) === 0;
    return fromEnd ? cells.findLastIndex(isIt) : cells.findIndex(isIt);
  }
  return nearest(value, cells, match, fromEnd);
}

function isLine(among: Value): among is Area {
  return among instanceof Area && (among.rows === 1 || among.cols === 1);
}

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
    if (cell === null || !sameKind(cell, value) || compare(cell, value) * side > 0) continue;
    const gain = best < 0 ? 1 : compare(cell, cells[best] ?? null) * side;
    if (gain > 0 || (gain === 0 && fromEnd)) best = i;
  }
  return best;
}

/**
 * Place in values that stand in ascending (or descending) order: the last one that is not past the
 * wanted value. Cells of another kind, errors included, are passed over.
 */
export function placeInOrder(
  wanted: CellValue,
  among: Value,
  descending = false,
): number | CellError {
  if (isCellError(wanted)) return wanted;
  const cells = vectorOf(among);
  if (isCellError(cells)) return cells;
  const value = wanted ?? 0;
  const side = descending ? -1 : 1;
  return cells.findLastIndex(
    (cell) => cell !== null && sameKind(cell, value) && compare(cell, value) * side <= 0,
  );
}

function sameKind(a: CellValue, b: CellValue): boolean {
  return typeof a === typeof b && !isCellError(a);
}
