import type { SheetBlock } from "../blocks/block";
import type { Book } from "../formulas/book";
import type { Habits, Meaning, OpeningEntry, Role } from "../types";
import { answeredBy } from "./answered";
import { constantOf } from "./constant";
import { ratesOf } from "./rates";
import { signOf } from "./sign";
import type { Stated } from "./stated";
import { unitsOf } from "./units";
import { verdictOf } from "./verdict";
import { wordsOf } from "./words";

/** What most readings of a block keep to, and what its workbook states. */
export function learnHabits(
  block: SheetBlock,
  stated: Stated,
  book: Book,
  openings: readonly OpeningEntry[],
  meanings: readonly Meaning[],
): Habits {
  const answered = answeredBy(meanings);
  const verdict = verdictOf(block, book, answered);
  const words = wordsOf(block, answered);
  const constant = constantOf(block, book);
  return {
    sign: signOf(block, stated.sign, answered),
    ...constant,
    window: stated.window,
    units: unitsOf(block, constant.constant?.value, stated.units, answered),
    decimalComma: usesComma(block),
    ...verdict,
    ...words,
    unknown: [...words.unknown, ...verdict.unknown],
    openings,
    rates: ratesOf(block),
    start: stated.start,
  };
}

const numbers: readonly Role[] = ["pressure", "area", "flow", "required"];

/** Of all numbers so many are texts where a sheet keeps its numbers as texts; fewer are slips. */
const leastTexts = 0.25;

/** Whether a sheet keeps its numbers as texts with a comma for the decimal point. */
function usesComma({ from, listing, cells }: SheetBlock): boolean {
  let [commas, points, all] = [0, 0, 0];
  for (const role of numbers) {
    const line = from.given.get(role);
    if (line === undefined) continue;
    listing.rows.forEach((row, at) => {
      if (!cells.isBlank(row, line + listing.shifts[at]!)) all++;
      const text = cells.text(row, line + listing.shifts[at]!);
      if (/\d,\d/.test(text)) commas++;
      else if (/\d\.\d/.test(text)) points++;
    });
  }
  return commas > points && commas >= leastTexts * all;
}
