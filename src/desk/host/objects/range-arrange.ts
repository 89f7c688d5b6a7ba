import { addressText, parseRectangle } from "../../../cells";
import type { HostRange } from "../host-range";
import type { OpenBook } from "../open-book";
import { overlaps } from "../subtract";
import { HostError, invalidArgument } from "../wire/errors";

/** Rows hidden one by one at once; a whole column of them is refused. */
const mostRows = 100_000;

export function hideRows(book: OpenBook, range: HostRange, isHidden: boolean): void {
  if (range.rows > mostRows) throw invalidArgument("Whole columns of rows cannot be hidden here.");
  range.tab.checkWritable();
  range.tab.sheet.arrange({ hiddenRows: lines(range.top, range.bottom, isHidden) });
  book.touched({ kind: "layout", sheet: range.tab.name });
}

export function hideColumns(book: OpenBook, range: HostRange, isHidden: boolean): void {
  range.tab.checkWritable();
  range.tab.sheet.arrange({ hiddenCols: lines(range.left, range.right, isHidden) });
  book.touched({ kind: "layout", sheet: range.tab.name });
}

function lines(first: number, last: number, isHidden: boolean): Map<number, boolean> {
  return new Map(Array.from({ length: last - first + 1 }, (_, i) => [first + i, isHidden]));
}

/** Joins the cells of a range, or (across) those of each of its rows. */
export function mergeCells(book: OpenBook, range: HostRange, across: boolean): void {
  range.tab.checkWritable();
  const rows = Array.from({ length: range.rows }, (_, i) => range.top + i);
  const joined = across ? rows.map((row) => range.with({ top: row, bottom: row })) : [range];
  const held = joined.flatMap((each) => {
    const used = range.tab.used(each);
    return used !== null && (used.bottom > each.top || used.right > each.left) ? [each] : [];
  });
  if (held.length > 0)
    throw new HostError(
      "UnsupportedOperation",
      `${held[0]?.address} holds more than its first cell, which would be lost: empty it before merging.`,
    );
  const others = range.tab.sheet.merges.filter((each) => !overlaps(parseRectangle(each), range));
  setMerges(book, range, [...others, ...joined.filter(isMany).map(addressText)]);
}

export function unmergeCells(book: OpenBook, range: HostRange): void {
  range.tab.checkWritable();
  const { merges } = range.tab.sheet;
  const kept = merges.filter((each) => !overlaps(parseRectangle(each), range));
  if (kept.length < merges.length) setMerges(book, range, kept);
}

/** Gives a range the merges of the cells that are copied to it. */
export function copyMerges(book: OpenBook, source: HostRange, range: HostRange): void {
  const [down, right] = [range.top - source.top, range.left - source.left];
  const merges = source.tab.merges(source).map((area) =>
    addressText({
      top: area.top + down,
      bottom: area.bottom + down,
      left: area.left + right,
      right: area.right + right,
    }),
  );
  if (merges.length > 0) setMerges(book, range, [...range.tab.sheet.merges, ...merges]);
}

function isMany({ rows, cols }: HostRange): boolean {
  return rows > 1 || cols > 1;
}

function setMerges(book: OpenBook, range: HostRange, merges: readonly string[]): void {
  range.tab.sheet.arrange({ merges });
  book.touched({ kind: "layout", sheet: range.tab.name });
}
