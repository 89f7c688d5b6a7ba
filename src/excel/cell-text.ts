import type { CellValue } from "../cells";

/** How Excel writes its error values: "#N/A", "#DIV/0!", "#NAME?". */
const errorText = /^#[A-Z][A-Z0-9/_]*[!?]?$/;

/** Whether a value may be an error: only its type tells that from a text. */
export function mayBeError(value: unknown): boolean {
  return typeof value === "string" && errorText.test(value);
}

/** A cell of `values` as the job reads it. `type` is its value type, where that was asked for. */
export function toCellValue(value: unknown, formula: unknown, type?: string): CellValue {
  if (typeof value === "number" || typeof value === "boolean") return value;
  if (typeof value !== "string") return null;
  if (value === "") return formulaOf(value, formula) === null ? null : "";
  return type === "Error" && mayBeError(value) ? { error: value } : value;
}

/** The formula of a cell of `formulas`, without "="; null where the cell holds a value or a text. */
export function formulaOf(value: unknown, formula: unknown): string | null {
  if (typeof formula !== "string" || !formula.startsWith("=") || formula.length < 2) return null;
  // A text that begins with "=" stands in both as it is.
  return formula === value ? null : formula.slice(1);
}

const months = "jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec";
const readAsOther = new RegExp(
  `^\\s*([=+\\-@'#(.$€£¥\\d]|(true|false)\\s*$|(${months})[a-z]*[\\s./-]*\\d)`,
  "i",
);

/**
 * A text as it must be written so that Excel keeps it as text: with an apostrophe before whatever
 * would be taken for a formula, a number, a date or a logical value.
 */
export function asText(text: string): string {
  return readAsOther.test(text) ? `'${text}` : text;
}

/** The number format under which whatever is written stays text. */
export const textFormat = "@";

/** A formula with its "=", whether or not it came with one. */
export function asFormula(formula: string): string {
  return formula.startsWith("=") ? formula : `=${formula}`;
}
