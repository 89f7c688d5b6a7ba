import type { CellValue } from "../cells";
import { readTyped } from "../sheet";

/** How a file writes numbers and days. */
export interface CsvHabits {
  /** "4,4" is four and four tenths, and days come before months. */
  readonly decimalComma: boolean;
}

const pointNumber = /^[-+]?(\d{1,3}(,\d{3})+|\d+)?(\.\d+)?$/;
const commaNumber = /^[-+]?(\d{1,3}([.\u00A0\u202F ]\d{3})+|\d+)?(,\d+)?$/;
const madeHarmless = /^'[=+\-@\t\r]/;
/** A code such as 007 is no number. */
const code = /^[-+]?0\d/;
const isoDay = /^\d{4}-\d{2}-\d{2}$/;
const otherDay = /^(\d{1,2})([./-])(\d{1,2})\2(\d{4})$/;

/**
 * What a cell of a text file holds: a number or a day where it can be nothing else, otherwise the
 * text as it stands. A text that looks like a formula stays text; "1-2" is no day; "" is a blank.
 */
export function readCell(text: string, { decimalComma }: CsvHabits): CellValue {
  const plain = text.trim();
  if (plain === "") return null;
  // The apostrophe that makes a text harmless to spreadsheets is no part of it.
  if (madeHarmless.test(text)) return text.slice(1);
  if (/\d/.test(plain) && !code.test(plain)) {
    const number = decimalComma ? commaNumber : pointNumber;
    if (number.test(plain)) return Number(inPoints(plain, decimalComma));
  }
  if (isoDay.test(plain)) return dayOf(plain) ?? text;
  const day = otherDay.exec(plain);
  if (day) return dayOf(isoOf(day, decimalComma)) ?? text;
  return text;
}

/** Whether a cell reads as a day, so that it is shown as one. */
export function isDay(text: string): boolean {
  const plain = text.trim();
  return isoDay.test(plain) || otherDay.test(plain);
}

function inPoints(plain: string, decimalComma: boolean): string {
  if (!decimalComma) return plain.replaceAll(",", "");
  return plain.replace(/[.\u00A0\u202F ]/g, "").replace(",", ".");
}

/** "1.2.2026" has the day first everywhere; "1/2/2026" only where numbers have a comma. */
function isoOf(
  [, first = "", sign, second = "", year]: RegExpExecArray,
  dayFirst: boolean,
): string {
  const isDayFirst = dayFirst || sign === "." || Number(first) > 12;
  const [month, day] = isDayFirst ? [second, first] : [first, second];
  return `${year}-${month.padStart(2, "0")}-${day.padStart(2, "0")}`;
}

function dayOf(iso: string): number | undefined {
  const { value } = readTyped(iso, false);
  return typeof value === "number" ? value : undefined;
}
