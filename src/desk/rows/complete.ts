import { headRow, isFormula, type RowsAt } from "./typed-cells";

/** How far up a column is looked for what was typed before. */
const mostAbove = 300;

/**
 * The rest of what is being typed, from the cell's own drop-down list or from the texts between it
 * and the heading of its column, the nearest first; "" for none. Short codes and sums of openings
 * are never completed: "A" must not become "A+C" under the tester's hands.
 */
export function restOf(at: RowsAt, row: number, col: number, typed: string): string {
  if (typed.trim() === "" || typed.startsWith("=")) return "";
  const wanted = typed.toLowerCase();
  for (const entry of candidates(at, row, col)) {
    if (entry.toLowerCase() === wanted) return "";
    if (isWord(entry) && entry.toLowerCase().startsWith(wanted)) return entry.slice(typed.length);
  }
  return "";
}

function* candidates(at: RowsAt, row: number, col: number): Iterable<string> {
  const { book, sheet } = at;
  yield* book.choices(sheet.name, row, col) ?? [];
  const last = Math.max(headRow(at, row) + 1, row - mostAbove);
  for (let above = row - 1; above >= last; above--) {
    const value = book.value(sheet.name, above, col);
    if (typeof value === "string" && !isFormula(at, above, col)) yield value;
  }
}

const isWord = (entry: string) => /\p{L}{3}/u.test(entry) && !entry.includes("+");
