import { worksheetFunctions } from "../../functions";
import { offsetOf, rectangleOf } from "../cells";
import type { Grid, JobFile } from "../job";
import { readWorkbook } from "../reading";
import { type SheetCells, SheetModel } from "../sheet";
import type { Sheet, Workbook } from "../workbook";
import { looksOf } from "./looks";
import { bodyOf } from "./sheet-body";

/** A workbook as the job reads it, with formulas evaluated afresh on request. */
export function toJobFile(workbook: Workbook): JobFile {
  const model = new SheetModel(workbook, worksheetFunctions);
  return {
    sheets: workbook.sheets.map((sheet) => ({ ...toGrid(sheet, model), ...looksOf(sheet) })),
    names: workbook.names,
    tables: workbook.tables.flatMap(({ name, sheet, ref, columns }) => {
      const area = rectangleOf(ref);
      return area ? [{ name, sheet, columns, ...area }] : [];
    }),
    dateOffset: offsetOf(workbook.date1904),
    recognise: readWorkbook,
    calculator: model,
  };
}

/** A sheet read from the model, which holds each cell in its place: a check asks for it many times. */
function toGrid(sheet: Sheet, model: SheetModel): Grid {
  const { name } = sheet;
  let cells: SheetCells | undefined;
  const read = () => {
    cells ??= model.cells(name);
    return cells;
  };
  return {
    name,
    ...bodyOf(sheet),
    value: (row, col) => read().value(row, col),
    formula: (row, col) => read().formula(row, col),
    copyOf: (row, col) => read().copyOf(row, col),
    hasFormula: (row, col) => read().hasFormula(row, col),
    column: (col, rows) => read().column(col, rows),
  };
}
