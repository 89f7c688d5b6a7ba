import { parseValue } from "numfmt";
import { type CellValue, offsetOf } from "../cells";

/** What a user typed into a cell. */
export interface Typed {
  readonly value: CellValue;
  /** Built-in number format that the way of typing suggests (14 for a date, 9 for 12%). */
  readonly formatId?: number;
}

const errorCodes = /^#(N\/A|VALUE!|REF!|DIV\/0!|NUM!|NAME\?|NULL!)$/i;
const dateFormats = new Set([14, 15, 16, 17, 22]);

/**
 * Reads typed text as a spreadsheet does: numbers, 12%, dates and times, TRUE, error values; text
 * that starts with an apostrophe stays text. "" is a blank. Formulas are not read here.
 */
export function readTyped(text: string, date1904: boolean): Typed {
  if (text === "") return { value: null };
  if (text.startsWith("'")) return { value: text.slice(1) };
  const plain = text.trim();
  if (errorCodes.test(plain)) return { value: { error: plain.toUpperCase() } };
  const read = parseValue(plain) as { value?: unknown; formatId?: number } | undefined;
  if (typeof read?.value === "boolean") return { value: read.value };
  if (typeof read?.value !== "number") return { value: text };
  const { formatId } = read;
  const isDate = formatId !== undefined && dateFormats.has(formatId);
  const value = isDate ? read.value - offsetOf(date1904) : read.value;
  return formatId === undefined ? { value } : { value, formatId };
}
