import { worksheetFunctions } from "../../functions";
import type { Grid, JobFile } from "../job";
import { SheetModel } from "../sheet";
import type { Sheet, Workbook } from "../workbook";

/** A workbook as the job reads it, with formulas evaluated afresh on request. */
export function toJobFile(workbook: Workbook): JobFile {
  const model = new SheetModel(workbook, worksheetFunctions);
  return {
    sheets: workbook.sheets.map(toGrid),
    dateOffset: workbook.date1904 ? 1462 : 0,
    fresh: (sheet, row, col) => model.recompute(sheet, row, col),
  };
}

function toGrid(sheet: Sheet): Grid {
  return {
    name: sheet.name,
    rowCount: sheet.rowCount,
    colCount: sheet.colCount,
    value: (row, col) => sheet.cell(row, col)?.value ?? null,
    formula: (row, col) => sheet.cell(row, col)?.formula ?? null,
  };
}
