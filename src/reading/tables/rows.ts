import { findUnit } from "../../units";
import { type Cells, Kind } from "../cells/cells";
import type { Book } from "../formulas/book";
import { testsOf } from "../formulas/tests";
import { readHeading } from "../text/heading";
import { cellWord } from "../text/vocabulary";

/** What a row holds, counted once. */
export interface RowCounts {
  readonly texts: Uint16Array;
  /** Typed numbers, also those written as text. */
  readonly numbers: Uint16Array;
  readonly formulas: Uint16Array;
}

export function countRows(cells: Cells): RowCounts {
  const [texts, numbers, formulas] = [0, 1, 2].map(() => new Uint16Array(cells.rows)) as [
    Uint16Array,
    Uint16Array,
    Uint16Array,
  ];
  for (let row = 0; row < cells.rows; row++)
    for (let col = 0; col < cells.cols; col++) {
      if (cells.hasFormula(row, col)) {
        formulas[row]!++;
        continue;
      }
      const kind = cells.kind(row, col);
      if (kind === Kind.text) texts[row]!++;
      else if (kind === Kind.number || kind === Kind.textNumber) numbers[row]!++;
    }
  return { texts, numbers, formulas };
}

/** How many headings of ours a row of texts seems to hold. */
export function headingHits(cells: Cells, row: number): { hits: number; sum: number } {
  let hits = 0;
  let sum = 0;
  for (let col = 0; col < cells.cols; col++) {
    if (cells.kind(row, col) !== Kind.text) continue;
    const text = cells.text(row, col);
    if (text.length > 60) continue;
    const { told, unit } = readHeading(text);
    let best = 0;
    let other = 0;
    for (const [role, { weight }] of told)
      if (role === "other") other = weight;
      else if (weight > best) best = weight;
    if (unit && best < 2.5) best = 2.5;
    if (Math.max(best, other) < 2) continue;
    hits += best >= other ? 1 : 0.6;
    sum += Math.max(best, other);
  }
  return { hits, sum };
}

/** Whether most of what a row holds are names of units. */
export function isUnitRow(cells: Cells, row: number): boolean {
  let units = 0;
  let filled = 0;
  for (let col = 0; col < cells.cols; col++) {
    if (cells.isBlank(row, col)) continue;
    filled++;
    if (unitOf(cells.text(row, col))) units++;
  }
  return units >= 2 && units >= filled * 0.5;
}

export function unitOf(text: string) {
  return findUnit(text.replace(/^[\s([]+|[\s)\]]+$/g, ""));
}

/**
 * Whether a row sums up others: it says so, or adds up along its column. "perhaps" where it says so
 * behind another word, as an opening may that is called middle.
 */
export function isTotal(cells: Cells, row: number, book: Book): boolean | "perhaps" {
  let labelled: boolean | "perhaps" = false;
  let first = true;
  let sums = 0;
  let formulas = 0;
  for (let col = 0; col < cells.cols; col++) {
    const shape = cells.shape(row, col);
    if (shape) {
      formulas++;
      if (testsOf(shape, cells, row, col, book).sums) sums++;
      continue;
    }
    if (cells.kind(row, col) !== Kind.text) continue;
    const text = cells.text(row, col);
    if (text.length > 40) continue;
    if ((first || text.length < 12) && cellWord(text).total) labelled ||= first || "perhaps";
    first = false;
  }
  return sums > 0 && sums >= formulas * 0.4 ? true : labelled;
}
