import { getFormatFromId } from "numfmt";
import { type CellValue, isIdentical } from "../../../cells";
import { readTyped } from "../../../sheet";
import type { SheetTab } from "../book";
import { typedForm } from "./typed-form";

/** What a cell holds: a formula as a user types it, or a value; null is a blank. */
export type Content =
  | { readonly formula: string }
  | {
      readonly value: CellValue;
      /** Number format that the way of typing suggests, such as "0%" for 12%. */
      readonly format?: string;
    };

/** What a cell holds of its own. A cell that another's formula spills over holds nothing. */
export function contentOf(tab: SheetTab, row: number, col: number): Content {
  const cell = tab.sheet.cell(row, col);
  if (cell === undefined) return { value: null };
  if (cell.formula !== null) return { formula: `=${typedForm(cell.formula, tab.book.functions)}` };
  const isSpilledOver = tab.book.model.anchorOf(tab.name, row, col) !== null;
  return { value: isSpilledOver ? null : cell.value };
}

export function sameContent(a: Content, b: Content): boolean {
  if ("formula" in a) return "formula" in b && a.formula === b.formula;
  if ("formula" in b) return false;
  return isIdentical(a.value, b.value);
}

/** What text means that is typed or written into a cell; cells formatted as text take it as it is. */
export function readContent(text: string, isTextCell: boolean, date1904: boolean): Content {
  if (isTextCell) return { value: text === "" ? null : text };
  const { value, formula, formatId } = readTyped(text, date1904);
  if (formula !== undefined) return { formula };
  if (formatId === undefined) return { value };
  const format = dayFormats[formatId] ?? getFormatFromId(formatId);
  return typeof format === "string" && format !== "General" ? { value, format } : { value };
}

/** Days are shown in the order that reads the same everywhere, whatever way they were typed. */
const dayFormats: Readonly<Record<number, string>> = {
  14: "yyyy-mm-dd",
  15: "yyyy-mm-dd",
  16: "yyyy-mm-dd",
  17: "yyyy-mm-dd",
  22: "yyyy-mm-dd hh:mm",
};
