import { Workbook } from "../workbook";

/** A copy in which each formula cell keeps its stored value and loses its formula. */
export function valuesCopy(bytes: Uint8Array): Uint8Array {
  const workbook = Workbook.open(bytes);
  for (const sheet of workbook.sheets) {
    const found: { row: number; col: number }[] = [];
    sheet.visit((row, col, _value, formula) => {
      if (formula !== null) found.push({ row, col });
    });
    for (const { row, col } of found) {
      const cell = sheet.cell(row, col);
      if (cell) sheet.setValue(row, col, cell.value);
    }
  }
  return workbook.save();
}
