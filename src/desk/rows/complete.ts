import { listedFor } from "./listed";
import { headRow, isFormula, type RowsAt } from "./typed-cells";

/** How far up a column is looked for what was typed before. */
const mostAbove = 300;

/**
 * The rest of what is being typed, from the cell's own drop-down list, from the texts between it and
 * the heading of its column, the nearest first, or from the list of such names on another sheet; ""
 * for none. Over one of these names the next of them is offered. Short codes and sums of openings
 * are never completed, nor numbers: "A" must not become "A+C" under the tester's hands.
 */
export function restOf(at: RowsAt, row: number, col: number, typed: string): string {
  if (typed.trim() === "" || typed.startsWith("=")) return "";
  const wanted = typed.toLowerCase();
  const offered = [...candidates(at, row, col)].filter(
    (entry) => isWord(entry) && entry.toLowerCase().startsWith(wanted),
  );
  if (offered.some((entry) => entry.length === typed.length)) return "";
  const rests = offered.map((entry) => entry.slice(typed.length));
  return rests.find((rest) => !(/\d$/.test(typed) && /^\d/.test(rest))) ?? "";
}

function* candidates(at: RowsAt, row: number, col: number): Iterable<string> {
  const { book, sheet } = at;
  yield* book.choices(sheet.name, row, col) ?? [];
  const listed = listedFor(at, row, col);
  const here = listed.indexOf(String(book.value(sheet.name, row, col)));
  if (here >= 0) yield* listed.slice(here + 1);
  const last = Math.max(headRow(at, row) + 1, row - mostAbove);
  for (let above = row - 1; above >= last; above--) {
    const value = book.value(sheet.name, above, col);
    if (typeof value === "string" && !isFormula(at, above, col)) yield value;
  }
  yield* listed;
}

const isWord = (entry: string) => /\p{L}{3}/u.test(entry) && !entry.includes("+");
