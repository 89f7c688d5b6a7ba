import { worksheetFunctions } from "../../functions";
import type { CellValue, Grid, JobFile } from "../job";
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

/** A sheet laid out in rows of arrays on first use: a check asks for each cell many times. */
function toGrid(sheet: Sheet): Grid {
  let values: CellValue[][] | undefined;
  const formulas: (string | null)[][] = [];
  const read = (): CellValue[][] => {
    const rows: CellValue[][] = [];
    for (const cell of sheet.cells()) {
      let row = rows[cell.row];
      if (!row) {
        row = [];
        rows[cell.row] = row;
        formulas[cell.row] = [];
      }
      row[cell.col] = cell.value;
      if (cell.formula !== null) (formulas[cell.row] as (string | null)[])[cell.col] = cell.formula;
    }
    return rows;
  };
  return {
    name: sheet.name,
    rowCount: sheet.rowCount,
    colCount: sheet.colCount,
    value: (row, col) => {
      values ??= read();
      return values[row]?.[col] ?? null;
    },
    formula: (row, col) => {
      values ??= read();
      return formulas[row]?.[col] ?? null;
    },
  };
}
