import {
  type Field,
  firstRow,
  headingHeight,
  headingOf,
  namingColumns,
  numberFormatOf,
  pointsOf,
  type RowFormulas,
  type SheetLayout,
  widthOf,
} from "../../job";
import type { Book } from "../run";
import type { System } from "../types";
import { type Written, writeRows } from "./write-blocks";

interface NewTable {
  readonly layout: SheetLayout;
  readonly system: System;
  /** How many rows get formulas. */
  readonly rows: number;
  readonly formulas: (row: number) => RowFormulas;
}

const heading = { fill: "#1F4E4A", color: "#FFFFFF" };
const computedFill = "#EEF3F1";

/** Lays out an empty sheet: headings, formulas in the first rows, formats and lists. */
export async function layOut(book: Book, sheet: Excel.Worksheet, table: NewTable): Promise<void> {
  const { layout, system, rows } = table;
  const headings = layout.fields.map((field) => headingOf(field, system));
  const body = Array.from({ length: rows }, (_, i) => {
    const formulas = table.formulas(firstRow + i);
    // null where nothing is entered: a formula beside may spill over it.
    return layout.fields.map(({ key }): Written => {
      const formula = formulas[key];
      return formula === undefined ? null : `=${formula}`;
    });
  });
  dressHeadings(sheet, headings.length);
  sheet.getRangeByIndexes(0, 0, 1, 1).format.rowHeight = headingHeight(layout, system);
  layout.fields.forEach((field, col) => {
    dressColumn(sheet.getRangeByIndexes(firstRow, col, rows, 1), field);
    sheet.getRangeByIndexes(0, col, 1, 1).format.columnWidth = pointsOf(widthOf(field));
  });
  sheet.freezePanes.freezeAt(sheet.getRangeByIndexes(0, 0, firstRow, namingColumns(layout)));
  await writeRows(book, sheet, 0, 0, [headings, ...body]);
}

/** The look of a heading row. */
export function dressHeadings(sheet: Excel.Worksheet, count: number): void {
  const { format } = sheet.getRangeByIndexes(0, 0, 1, count);
  format.fill.color = heading.fill;
  format.font.color = heading.color;
  format.font.bold = true;
  format.wrapText = true;
}

function dressColumn(column: Excel.Range, field: Field): void {
  const code = numberFormatOf(field);
  // One code for all cells of the column.
  if (code !== undefined) column.numberFormat = code as unknown as string[][];
  if (field.is) column.format.fill.color = computedFill;
  if (field.wraps) column.format.wrapText = true;
  const { choices: entries } = field;
  if (entries)
    column.dataValidation.rule = { list: { inCellDropDown: true, source: entries.join(",") } };
}
