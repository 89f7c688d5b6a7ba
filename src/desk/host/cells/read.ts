import { format } from "numfmt";
import { type CellValue, offsetOf } from "../../../cells";
import type { SheetTab } from "../book";
import type { HostRange } from "../host-range";
import { typedForm } from "./typed-form";

type CodeAt = (tab: SheetTab, row: number, col: number) => string;

/** Rows of cells as the client gets them; null for whole columns or rows, which have no end. */
type Rows<T> = T[][] | null;

function rows<T>(range: HostRange, cell: (row: number, col: number) => T): Rows<T> {
  if (range.isEntireColumn || range.isEntireRow) return null;
  range.checkCellCount();
  const out: T[][] = new Array(range.rows);
  for (let row = range.top; row <= range.bottom; row++) {
    const line: T[] = new Array(range.cols);
    for (let col = range.left; col <= range.right; col++) line[col - range.left] = cell(row, col);
    out[row - range.top] = line;
  }
  return out;
}

/** A value as the client gets it: blanks as "", errors by their code. */
export function wireValue(value: CellValue): number | string | boolean {
  if (value === null) return "";
  return typeof value === "object" ? value.error : value;
}

export function valueType(value: CellValue): string {
  if (value === null) return "Empty";
  if (typeof value === "object") return "Error";
  if (typeof value === "number") return "Double";
  return typeof value === "boolean" ? "Boolean" : "String";
}

export function valuesOf(range: HostRange) {
  const { name, book } = range.tab;
  return rows(range, (row, col) => wireValue(book.model.value(name, row, col)));
}

export function valueTypesOf(range: HostRange) {
  const { name, book } = range.tab;
  return rows(range, (row, col) => valueType(book.model.value(name, row, col)));
}

/** Formulas with "="; the value where a cell has none. */
export function formulasOf(range: HostRange) {
  const { sheet, name, book } = range.tab;
  return rows(range, (row, col) => {
    const formula = sheet.cell(row, col)?.formula ?? null;
    if (formula === null) return wireValue(book.model.value(name, row, col));
    return `=${typedForm(formula, book.functions)}`;
  });
}

/** `code` gives the number format of a cell. */
export function textOf(range: HostRange, code: CodeAt) {
  const { name, book } = range.tab;
  return rows(range, (row, col) =>
    shownText(book.model.value(name, row, col), code(range.tab, row, col), book.workbook.date1904),
  );
}

/** A value as its number format shows it, however narrow the column. */
export function shownText(value: CellValue, code: string, date1904: boolean): string {
  if (value === null) return "";
  if (typeof value === "object") return value.error;
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (typeof value === "string" && !code.includes("@")) return value;
  const isDay = typeof value === "number" && isDate(code);
  const shifted = isDay ? value + offsetOf(date1904) : value;
  try {
    return format(code, shifted);
  } catch {
    return String(value);
  }
}

/** Day counts of the 1904 system are shown as dates only by formats for dates. */
function isDate(code: string): boolean {
  return /[ymd]/i.test(code.replace(/"[^"]*"|\\.|\[[^\]]*\]/g, "")) && code !== "General";
}

export function numberFormatsOf(range: HostRange, code: CodeAt) {
  return rows(range, (row, col) => code(range.tab, row, col));
}
