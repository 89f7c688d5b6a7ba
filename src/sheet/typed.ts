import { parseValue } from "numfmt";
import { type CellValue, offsetOf } from "../cells";
import { FormulaSyntaxError, parseFormula } from "./parse";

/** What a user typed into a cell. */
interface Typed {
  readonly value: CellValue;
  /** Where it is a formula: with "=", which +A1, -B2*2 and @A1:A9 go without. */
  readonly formula?: string;
  /** Built-in number format that the way of typing suggests (14 for a date, 9 for 12%). */
  readonly formatId?: number;
}

const errorCodes = /^#(N\/A|VALUE!|REF!|DIV\/0!|NUM!|NAME\?|NULL!)$/i;
const dateFormats = new Set([14, 15, 16, 17, 22]);

/**
 * Reads typed text as a spreadsheet does: numbers, 12%, dates and times, TRUE, error values; text
 * that starts with an apostrophe stays text. "" is a blank.
 */
export function readTyped(text: string, date1904: boolean): Typed {
  if (text === "") return { value: null };
  if (text.startsWith("'")) return { value: text.slice(1) };
  const plain = text.trim();
  if (errorCodes.test(plain)) return { value: { error: plain.toUpperCase() } };
  if (text.startsWith("=") && text.length > 1) return { value: null, formula: text };
  const read = parseValue(plain) as { value?: unknown; formatId?: number } | undefined;
  if (typeof read?.value === "boolean") return { value: read.value };
  if (typeof read?.value !== "number")
    return isFormula(plain) ? { value: null, formula: `=${plain}` } : { value: text };
  const { formatId } = read;
  const isDate = formatId !== undefined && dateFormats.has(formatId);
  const value = isDate ? read.value - offsetOf(date1904) : read.value;
  return formatId === undefined ? { value } : { value, formatId };
}

function isFormula(text: string): boolean {
  if (!/^[+\-@]\s*[\w$(]*[$(\d]/.test(text)) return false;
  try {
    parseFormula(`=${text}`, new Set());
    return true;
  } catch (error) {
    if (!(error instanceof FormulaSyntaxError)) throw error;
    return false;
  }
}
