import { isDateFormat, isPercentFormat } from "numfmt";
import type { Content } from "./content";
import { readContent, sameContent } from "./content";
import { shownText } from "./read";

/** What to type into a cell to give it this content; what a formula bar shows. */
export function typedText(content: Content, code: string, date1904: boolean): string {
  if ("formula" in content) return content.formula;
  const { value } = content;
  if (value === null) return "";
  if (typeof value === "object") return value.error;
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (typeof value === "number") return numberText(value, code, date1904);
  if (code === "@") return value;
  // Text that would be read as something else, or lose its apostrophe, gets one before it.
  const isPlain = sameContent(readContent(value, false, date1904), { value });
  return isPlain ? value : `'${value}`;
}

function numberText(value: number, code: string, date1904: boolean): string {
  if (isPercentFormat(code)) return `${Number((value * 100).toPrecision(15))}%`;
  if (isDateFormat(code)) {
    const hasTime = !Number.isInteger(value);
    return shownText(value, hasTime ? "yyyy-mm-dd hh:mm:ss" : "yyyy-mm-dd", date1904);
  }
  return String(value);
}
