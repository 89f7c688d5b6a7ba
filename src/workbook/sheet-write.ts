import { checkContent, formulaXml, valueXml } from "./cell-xml";
import { checkedColor } from "./color";
import type { Dialect } from "./dialect";
import { MAX_COLS, MAX_ROWS, parseRange, toRef } from "./refs";
import { escapeAttribute, escapeText } from "./text";
import type { CellSpec, SheetSpec, ValidationSpec } from "./types";

/** Longest list of entries a validation can spell out (ECMA-376 limits formula1 of a list to 255 characters). */
const maxListText = 255;

function cellXml(
  sheet: string,
  row: number,
  col: number,
  spec: CellSpec,
  mark: () => number,
): string {
  const { value = null, formula = null, arrayRef = null, style = 0 } = spec;
  const where = `${sheet}!${toRef(row, col)}`;
  checkContent(where, formula, value);
  if (arrayRef !== null) {
    const { top, left } = parseRange(arrayRef);
    if (formula === null || top !== row || left !== col) {
      throw new RangeError(`${where}: the range ${arrayRef} must start at a formula's own cell.`);
    }
  }
  if (value === null && formula === null && style === 0) return "";
  const written = valueXml("", value, formula !== null);
  const inner = (formula === null ? "" : formulaXml("", formula, arrayRef)) + written.xml;
  let tag = `<c r="${toRef(row, col)}"`;
  if (style !== 0) tag += ` s="${style}"`;
  if (written.type !== null) tag += ` t="${written.type}"`;
  if (arrayRef !== null) tag += ` cm="${mark()}"`;
  return inner === "" ? `${tag}/>` : `${tag}>${inner}</c>`;
}

function viewXml(spec: SheetSpec, selected: boolean): string {
  const rows = spec.frozenRows ?? 0;
  const cols = spec.frozenCols ?? 0;
  const open = `<sheetView${selected ? ' tabSelected="1"' : ""} workbookViewId="0"`;
  if (rows === 0 && cols === 0) return `<sheetViews>${open}/></sheetViews>`;
  const pane = rows === 0 ? "topRight" : cols === 0 ? "bottomLeft" : "bottomRight";
  const split = `${cols > 0 ? ` xSplit="${cols}"` : ""}${rows > 0 ? ` ySplit="${rows}"` : ""}`;
  return `<sheetViews>${open}><pane${split} topLeftCell="${toRef(rows, cols)}" activePane="${pane}" state="frozen"/><selection pane="${pane}"/></sheetView></sheetViews>`;
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
  let source = formula;
  if (list !== undefined) {
    const comma = list.find((entry) => entry.includes(","));
    if (comma !== undefined) {
      throw new RangeError(
        `Validation of ${ref}: the entry "${comma}" holds a comma; put the list in cells.`,
      );
    }
    const joined = list.join(",");
    if (joined.length > maxListText) {
      throw new RangeError(
        `Validation of ${ref}: the list has over ${maxListText} characters; put it in cells.`,
      );
    }
    source = `"${joined.replaceAll('"', '""')}"`;
  }
  if (source === undefined) throw new RangeError(`Validation of ${ref}: give a list or a formula.`);
  return `<dataValidation type="list" allowBlank="1" showInputMessage="1" showErrorMessage="1" sqref="${escapeAttribute(ref)}"><formula1>${escapeText(source)}</formula1></dataValidation>`;
}

export interface NewSheet {
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
  if (spec.rows.length > MAX_ROWS) throw new RangeError(`${name}: a sheet has ${MAX_ROWS} rows.`);
  for (const [row, specs] of spec.rows.entries()) {
    if (specs.length > MAX_COLS) throw new RangeError(`${name}: a row has ${MAX_COLS} columns.`);
    let cells = "";
    for (const [col, cell] of specs.entries()) {
      if (cell !== null) cells += cellXml(name, row, col, cell, mark);
    }
    cols = Math.max(cols, specs.length);
    if (cells !== "") rows.push(`<row r="${row + 1}">${cells}</row>`);
  }
  const last = toRef(Math.max(spec.rows.length, 1) - 1, Math.max(cols, 1) - 1);
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
    spec.printLandscape ? '<pageSetup orientation="landscape"/>' : "",
    "</worksheet>",
  ].join("");
}
