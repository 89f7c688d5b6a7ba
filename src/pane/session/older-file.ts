import { InputError, offsetOf } from "../../cells";
import type { JobFile } from "../../job";

/**
 * A workbook file as the job reads it: its stored values and formulas, none of which is evaluated
 * again. Rejects with an InputError whose message is one line that says what is wrong with the file.
 */
export async function readOlderFile(file: Blob): Promise<JobFile> {
  const [{ defaultLimits, Workbook }, { SheetModel }] = await Promise.all([
    import("../../workbook"),
    import("../../sheet"),
  ]);
  const mostMegabytes = defaultLimits.fileBytes / 2 ** 20;
  // Before its bytes are in memory.
  if (file.size > defaultLimits.fileBytes)
    throw new InputError(
      `The file has ${Math.round(file.size / 2 ** 20)} MB: workbooks of up to ${mostMegabytes} MB are read.`,
    );
  const workbook = Workbook.open(new Uint8Array(await file.arrayBuffer()));
  const model = new SheetModel(workbook, []);
  return {
    sheets: workbook.sheets.map((sheet) => ({
      ...model.cells(sheet.name),
      name: sheet.name,
      rowCount: sheet.rowCount,
      colCount: sheet.colCount,
      hiddenRow: (row) => sheet.isHiddenRow(row),
      hiddenCol: (col) => sheet.isHiddenCol(col),
      numberFormat: (row, col) => sheet.numberFormat(row, col),
    })),
    dateOffset: offsetOf(workbook.date1904),
  };
}
