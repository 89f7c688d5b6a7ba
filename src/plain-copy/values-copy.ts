import { cellName } from "../cells";
import { Workbook } from "../workbook";
import type { LeftCell } from "./left";

interface ValuesCopy {
  readonly bytes: Uint8Array;
  /** Formulas that left nothing behind. */
  readonly left: readonly LeftCell[];
}

/** A copy in which each formula cell keeps its stored value and loses its formula. */
export function valuesCopy(bytes: Uint8Array): ValuesCopy {
  const left: LeftCell[] = [];
  const workbook = Workbook.open(bytes);
  for (const sheet of workbook.sheets) {
    const found: { row: number; col: number }[] = [];
    sheet.visit((row, col, _value, formula) => {
      if (formula !== null) found.push({ row, col });
    });
    for (const { row, col } of found) {
      const cell = sheet.cell(row, col);
      if (cell) sheet.setValue(row, col, cell.value);
      if (cell?.value === null)
        left.push({
          sheet: sheet.name,
          cell: cellName(row, col),
          why: "blank now, since no value was stored with the formula: recalculate the original in a spreadsheet program, save it, and copy again",
        });
    }
  }
  return { bytes: workbook.save(), left };
}
