import { cellName, maxCols, maxRows } from "../cells";
import { newCellXml, type SpliceContext } from "./cell-splice";
import { checkAnchor, checkContent } from "./cell-xml";
import type { Dialect } from "./dialect";
import { escapeAttribute } from "./text";
import type { CellSpec, SheetSpec } from "./types";

function cellXml(sheet: string, row: number, col: number, spec: CellSpec, context: SpliceContext) {
  const { value = null, formula = null, arrayRef = null, style = 0 } = spec;
  const where = `${sheet}!${cellName(row, col)}`;
  checkContent(where, formula, value);
  if (arrayRef !== null) checkAnchor(where, row, col, formula, arrayRef);
  if (value === null && formula === null && style === 0) return "";
  const written = formula === null ? undefined : { text: formula, arrayRef, isFixed: false };
  return newCellXml("", row, col, { formula: written, value, newStyle: style }, context);
}

interface NewSheet extends SpliceContext {
  readonly name: string;
  readonly spec: SheetSpec;
  readonly dialect: Dialect;
  /** Shown first when the workbook opens. */
  readonly selected: boolean;
}

/** The part of a new worksheet with its cells; what stands around them is arranged in it. Throws a RangeError for content a sheet cannot hold. */
export function sheetXml({ name, spec, dialect, selected, ...context }: NewSheet): string {
  let cols = 0;
  const rows: string[] = [];
  if (spec.rows.length > maxRows) throw new RangeError(`${name}: a sheet has ${maxRows} rows.`);
  for (const [row, specs] of spec.rows.entries()) {
    if (specs.length > maxCols) throw new RangeError(`${name}: a row has ${maxCols} columns.`);
    let cells = "";
    for (const [col, cell] of specs.entries()) {
      if (cell !== null) cells += cellXml(name, row, col, cell, context);
    }
    cols = Math.max(cols, specs.length);
    const height = spec.rowHeights?.[row] ?? null;
    const ht = height === null ? "" : ` ht="${height}" customHeight="1"`;
    if (cells !== "") rows.push(`<row r="${row + 1}"${ht}>${cells}</row>`);
    else if (ht !== "") rows.push(`<row r="${row + 1}"${ht}/>`);
  }
  const last = cellName(Math.max(spec.rows.length, 1) - 1, Math.max(cols, 1) - 1);
  return [
    `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<worksheet xmlns="${dialect.main}">`,
    `<dimension ref="${last === "A1" ? last : `A1:${last}`}"/>`,
    `<sheetViews><sheetView${selected ? ' tabSelected="1"' : ""} workbookViewId="0"/></sheetViews>`,
    rows.length === 0 ? "<sheetData/>" : `<sheetData>${rows.join("")}</sheetData>`,
    spec.autoFilter === undefined ? "" : `<autoFilter ref="${escapeAttribute(spec.autoFilter)}"/>`,
    "</worksheet>",
  ].join("");
}
