import { cellName, maxCols, maxRows, parseRectangle } from "../cells";
import { listFormula } from "./arrange/validations";
import { paneOf } from "./arrange/view";
import { checkContent, formulaXml, valueXml } from "./cell-xml";
import { checkedColor } from "./color";
import type { Dialect } from "./dialect";
import { escapeAttribute, escapeText } from "./text";
import { openingTag } from "./tree";
import type { CellSpec, SheetSpec, ValidationSpec } from "./types";

function cellXml(
  sheet: string,
  row: number,
  col: number,
  spec: CellSpec,
  mark: () => number,
): string {
  const { value = null, formula = null, arrayRef = null, style = 0 } = spec;
  const where = `${sheet}!${cellName(row, col)}`;
  checkContent(where, formula, value);
  if (arrayRef !== null) {
    const { top, left } = parseRectangle(arrayRef);
    if (formula === null || top !== row || left !== col) {
      throw new RangeError(`${where}: the range ${arrayRef} must start at a formula's own cell.`);
    }
  }
  if (value === null && formula === null && style === 0) return "";
  const written = valueXml("", value, formula !== null);
  const inner = (formula === null ? "" : formulaXml("", formula, arrayRef)) + written.xml;
  let tag = `<c r="${cellName(row, col)}"`;
  if (style !== 0) tag += ` s="${style}"`;
  if (written.type !== null) tag += ` t="${written.type}"`;
  if (arrayRef !== null) tag += ` cm="${mark()}"`;
  return inner === "" ? `${tag}/>` : `${tag}>${inner}</c>`;
}

function viewXml(spec: SheetSpec, selected: boolean): string {
  const pane = paneOf(spec.frozenRows ?? 0, spec.frozenCols ?? 0);
  const open = `<sheetView${selected ? ' tabSelected="1"' : ""} workbookViewId="0"`;
  if (pane === null) return `<sheetViews>${open}/></sheetViews>`;
  const panes = openingTag("pane", pane.attributes, true);
  return `<sheetViews>${open}>${panes}<selection pane="${pane.active}"/></sheetView></sheetViews>`;
}

function columnsXml(widths: readonly (number | null)[]): string {
  const cols = widths
    .map((width, col) =>
      width === null
        ? ""
        : `<col min="${col + 1}" max="${col + 1}" width="${width}" customWidth="1"/>`,
    )
    .join("");
  return cols === "" ? "" : `<cols>${cols}</cols>`;
}

function validationXml({ ref, list, formula }: ValidationSpec): string {
  const source = list === undefined ? formula : listFormula(ref, list);
  if (source === undefined) throw new RangeError(`Validation of ${ref}: give a list or a formula.`);
  return `<dataValidation type="list" allowBlank="1" showInputMessage="1" showErrorMessage="1" sqref="${escapeAttribute(ref)}"><formula1>${escapeText(source)}</formula1></dataValidation>`;
}

interface NewSheet {
  readonly name: string;
  readonly spec: SheetSpec;
  readonly dialect: Dialect;
  /** Shown first when the workbook opens. */
  readonly selected: boolean;
  /** The cm attribute for dynamic arrays. */
  mark(): number;
}

/** The part of a new worksheet. Throws a RangeError for content a sheet cannot hold. */
export function sheetXml({ name, spec, dialect, selected, mark }: NewSheet): string {
  let cols = 0;
  const rows: string[] = [];
  if (spec.rows.length > maxRows) throw new RangeError(`${name}: a sheet has ${maxRows} rows.`);
  for (const [row, specs] of spec.rows.entries()) {
    if (specs.length > maxCols) throw new RangeError(`${name}: a row has ${maxCols} columns.`);
    let cells = "";
    for (const [col, cell] of specs.entries()) {
      if (cell !== null) cells += cellXml(name, row, col, cell, mark);
    }
    cols = Math.max(cols, specs.length);
    const height = spec.rowHeights?.[row] ?? null;
    const ht = height === null ? "" : ` ht="${height}" customHeight="1"`;
    if (cells !== "") rows.push(`<row r="${row + 1}"${ht}>${cells}</row>`);
    else if (ht !== "") rows.push(`<row r="${row + 1}"${ht}/>`);
  }
  const last = cellName(Math.max(spec.rows.length, 1) - 1, Math.max(cols, 1) - 1);
  const color = spec.tabColor;
  const validations = (spec.validations ?? []).map(validationXml);
  return [
    `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<worksheet xmlns="${dialect.main}">`,
    color === undefined ? "" : `<sheetPr><tabColor rgb="FF${checkedColor(color)}"/></sheetPr>`,
    `<dimension ref="${last === "A1" ? last : `A1:${last}`}"/>`,
    viewXml(spec, selected),
    columnsXml(spec.columnWidths ?? []),
    rows.length === 0 ? "<sheetData/>" : `<sheetData>${rows.join("")}</sheetData>`,
    spec.autoFilter === undefined ? "" : `<autoFilter ref="${escapeAttribute(spec.autoFilter)}"/>`,
    validations.length === 0
      ? ""
      : `<dataValidations count="${validations.length}">${validations.join("")}</dataValidations>`,
    "</worksheet>",
  ].join("");
}
