import { type CellValue, type Copied, InputError, offsetOf } from "../../cells";
import type { Grid, JobFile } from "../../job";
import type { Sheet } from "../../workbook";

/**
 * A workbook file as the job reads it: its stored values and formulas, none of which is evaluated
 * again. Rejects with an InputError whose message is one line that says what is wrong with the file.
 */
export async function readOlderFile(file: Blob): Promise<JobFile> {
  const { defaultLimits, Workbook } = await import("../../workbook");
  const mostMegabytes = defaultLimits.fileBytes / 2 ** 20;
  // Before its bytes are in memory.
  if (file.size > defaultLimits.fileBytes)
    throw new InputError(
      `The file has ${Math.round(file.size / 2 ** 20)} MB: workbooks of up to ${mostMegabytes} MB are read.`,
    );
  const workbook = Workbook.open(new Uint8Array(await file.arrayBuffer()));
  return {
    sheets: workbook.sheets.map(toGrid),
    dateOffset: offsetOf(workbook.date1904),
  };
}

interface Row {
  readonly values: CellValue[];
  readonly formulas: (string | Copied | null)[];
}

function toGrid(sheet: Sheet): Grid {
  const rows: (Row | undefined)[] = [];
  sheet.visit((row, col, value, formula) => {
    const own = rows[row] ?? { values: [], formulas: [] };
    rows[row] = own;
    own.values[col] = value;
    if (formula !== null) own.formulas[col] = formula;
  });
  const formulaAt = (row: number, col: number) => rows[row]?.formulas[col] ?? null;
  return {
    name: sheet.name,
    rowCount: sheet.rowCount,
    colCount: sheet.colCount,
    value: (row, col) => rows[row]?.values[col] ?? null,
    formula: (row, col) => {
      const formula = formulaAt(row, col);
      return formula === null || typeof formula === "string" ? formula : formula.at(row);
    },
    hasFormula: (row, col) => formulaAt(row, col) !== null,
    copyOf: (row, col) => {
      const formula = formulaAt(row, col);
      return typeof formula === "object" ? formula : null;
    },
    hiddenRow: (row) => sheet.isHiddenRow(row),
    hiddenCol: (col) => sheet.isHiddenCol(col),
    numberFormat: (row, col) => sheet.numberFormat(row, col),
  };
}
