import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import { type CellValue, columnLetters, isBlankCell, isCellError } from "../../cells";
import type { Finding } from "../findings";
import type { JobFile } from "../grid";

const shownDigits = 12;

/**
 * Twelve hex digits that stand for a finding's kind and what its rows hold, values and formulas.
 * The same in every host: spellings of formulas that only files carry are left out, and numbers
 * are taken to 10 digits, since programs differ in the last ones.
 */
export function fingerprintOf(
  file: JobFile,
  { kind, sheet, row, cells: own = [] }: Pick<Finding, "kind" | "sheet" | "row"> & Partial<Finding>,
): string {
  const cells: string[] = [kind];
  addRow(file, sheet, row, cells);
  const met = new Set([`${sheet}!${row}`]);
  for (const { sheet: name, cell } of own) {
    const further = Number(/\d+$/.exec(cell)?.[0] ?? 0) - 1;
    if (met.has(`${name}!${further}`)) continue;
    met.add(`${name}!${further}`);
    addRow(file, name, further, cells);
  }
  return bytesToHex(sha256(utf8ToBytes(cells.join("\u001f")))).slice(0, shownDigits);
}

function addRow(file: JobFile, sheet: string, row: number, cells: string[]): void {
  const grid = file.sheets.find(({ name }) => name === sheet);
  for (let col = 0; grid && row >= 0 && col < grid.colCount; col++) {
    const formula = grid.formula(row, col);
    const value = grid.value(row, col);
    if (formula === null && isBlankCell(value)) continue;
    cells.push(`${columnLetters(col)}${formula === null ? "" : `=${plainFormula(formula)}`}`);
    cells.push(contentOf(value));
  }
}

/** A value with its type, the same whatever program stored it. */
function contentOf(value: CellValue): string {
  if (isBlankCell(value)) return "";
  if (isCellError(value)) return `e${value.error}`;
  switch (typeof value) {
    case "number":
      return `n${Number(value.toPrecision(10))}`;
    case "boolean":
      return `b${value}`;
    default:
      return `s${String(value).replaceAll("\r\n", "\n")}`;
  }
}

/** A formula without the prefixes that only files carry. */
export function plainFormula(formula: string): string {
  return formula
    .replace(/\[\d+\]!(?=_xldudf_)/gi, "")
    .replace(/_xldudf_FANROW_/gi, "FANROW.")
    .replace(/(_xlfn\.|_xlws\.|_xlpm\.)/gi, "");
}
