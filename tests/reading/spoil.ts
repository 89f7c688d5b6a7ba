import type { CellValue } from "../../src/cells";
import type { ReadGrid } from "../../src/reading";
import { dice } from "./dice";
import type { Invented } from "./invent";
import { languages } from "./tongues";

export type Spoiling = "values" | "headings" | "both" | "words" | "four rows";

const words = new Set(
  languages.flatMap(({ rooms, continuous, demand, verdicts }) => [
    ...rooms,
    ...continuous,
    ...demand,
    ...verdicts.flat(),
  ]),
);

/** The same workbook with something taken from it that a reader might lean on. */
export function spoil(made: Invented, how: Spoiling, seed: number): Invented {
  const d = dice(seed);
  const known = new Map<string, string>();
  const nonsense = (text: string) => {
    let word = known.get(text);
    if (word === undefined) {
      word = Array.from(
        { length: d.whole(2, 4) },
        () => d.pick([..."bdfgklmnprstvz"]) + d.pick([..."aeiou"]),
      ).join("");
      known.set(text, word);
    }
    return word;
  };
  const heads = new Set(made.heads);
  const swap = (value: CellValue): CellValue => {
    if (typeof value !== "string") return value;
    if ((how === "headings" || how === "both") && heads.has(value)) return nonsense(value);
    return how === "words" && words.has(value) ? nonsense(value) : value;
  };
  const cut = how === "four rows" ? (made.first ?? 0) + 4 : Number.POSITIVE_INFINITY;
  const sheets = made.book.sheets.map(
    (grid): ReadGrid => ({
      ...grid,
      rowCount: grid.name === "Data" ? Math.min(grid.rowCount, cut) : grid.rowCount,
      value: (row, col) => swap(grid.value(row, col)),
      formula: (row, col) =>
        how === "headings" || how === "four rows" ? grid.formula(row, col) : null,
    }),
  );
  const expected =
    how === "four rows"
      ? made.expected.map((entry) => ({ ...entry, readings: Number.NaN }))
      : made.expected;
  return { ...made, book: { ...made.book, sheets }, expected };
}
