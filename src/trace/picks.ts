import type { CellValue, Place, Spot } from "../cells";
import type { JobFile } from "../job";
import { evaluateAt } from "./calculator";
import { alone, type Call } from "./calls";
import { forEachUsed, gridOf, isReference, mostListed, placeOf, seenAt } from "./places";
import type { Pick } from "./trace-data";

/**
 * The cells that a look-up or a conditional sum takes from its ranges, where that can be told. One
 * that stands in the formula twice is told once.
 */
export function picksOf(calls: readonly Call[], at: Spot, file: JobFile): Pick[] {
  const once = new Map(calls.map((call) => [call.text, call]));
  return [...once.values()].flatMap((call) => {
    const rows = call.name === "INDEX" ? indexed(call, at, file) : conditional(call, at, file);
    if (!rows) return [];
    const cells = rows
      .slice(0, mostListed)
      .map(([sheet, row, col]) => seenAt(sheet, row, col, file));
    return [{ text: call.text, cells, count: rows.length }];
  });
}

type Found = [sheet: string, row: number, col: number][];

/** INDEX over a plain range: the one cell that row and column point at. */
function indexed(call: Call, at: Spot, file: JobFile): Found | undefined {
  const place = rangeOf(call, 0, at, file);
  if (!place) return undefined;
  const number = (i: number) => {
    const piece = call.args[i];
    if (!piece || piece.text === "") return undefined;
    const found = evaluateAt(alone(piece.text, call), at, file);
    return "value" in found && typeof found.value === "number" ? found.value : Number.NaN;
  };
  const [first, second] = [number(1), number(2)];
  const isRow = place.top === place.bottom && second === undefined;
  const row = isRow ? 1 : (first ?? 1);
  const col = isRow ? (first ?? 1) : (second ?? 1);
  const [r, c] = [place.top + row - 1, place.left + col - 1];
  const isInside = r >= place.top && r <= place.bottom && c >= place.left && c <= place.right;
  return isInside ? [[place.sheet, r, c]] : undefined;
}

/** Where the ranges of a conditional sum stand among its arguments. */
const shapes: Readonly<Record<string, { sum: number; tests: (count: number) => number[] }>> = {
  SUMIFS: { sum: 0, tests: (count) => pairs(1, count) },
  AVERAGEIFS: { sum: 0, tests: (count) => pairs(1, count) },
  MAXIFS: { sum: 0, tests: (count) => pairs(1, count) },
  MINIFS: { sum: 0, tests: (count) => pairs(1, count) },
  COUNTIFS: { sum: 0, tests: (count) => pairs(0, count) },
  SUMIF: { sum: 2, tests: () => [0] },
  AVERAGEIF: { sum: 2, tests: () => [0] },
  COUNTIF: { sum: 0, tests: () => [0] },
};

function pairs(from: number, count: number): number[] {
  const out: number[] = [];
  for (let i = from; i + 1 < count; i += 2) out.push(i);
  return out;
}

/** The cells that a conditional sum takes; undefined where a criterion is more than a plain value. */
function conditional(call: Call, at: Spot, file: JobFile): Found | undefined {
  const shape = shapes[call.name];
  if (!shape) return undefined;
  const sum = rangeOf(call, shape.sum, at, file) ?? rangeOf(call, 0, at, file);
  if (!sum) return undefined;
  let rows: Set<number> | undefined;
  for (const i of shape.tests(call.args.length)) {
    const place = rangeOf(call, i, at, file);
    const piece = call.args[i + 1];
    if (!place || !piece || place.left !== place.right) return undefined;
    const found = evaluateAt(alone(piece.text, call), at, file);
    if (!("value" in found) || !isPlain(found.value)) return undefined;
    const wanted = keyOf(found.value);
    const matching = new Set<number>();
    forEachUsed(place, file, (row, _, value) => {
      if (keyOf(value) === wanted && (!rows || rows.has(row - place.top)))
        matching.add(row - place.top);
    });
    rows = matching;
  }
  return [...(rows ?? [])].map((row) => [sum.sheet, sum.top + row, sum.left]);
}

/** Neither a comparison nor a pattern, and not blank, which means other things to each function. */
function isPlain(value: CellValue): value is string | number {
  return typeof value === "number" || (typeof value === "string" && /^[^<>=*?~]+$/.test(value));
}

const keyOf = (value: CellValue) =>
  typeof value === "object" ? "" : String(value).trim().toLowerCase();

function rangeOf(call: Call, index: number, at: Spot, file: JobFile): Place | undefined {
  const tokens = call.args[index]?.tokens ?? [];
  const [token] = tokens;
  if (tokens.length !== 1 || !token || !isReference(token)) return undefined;
  const place = placeOf(token.value, at.sheet, file);
  return place && gridOf(file, place.sheet) ? place : undefined;
}
