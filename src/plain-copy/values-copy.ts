import { cellName } from "../cells";
import { Workbook } from "../workbook";
import type { LeftCell } from "./left";

interface ValuesCopy {
  readonly bytes: Uint8Array;
  /** Formulas that left nothing behind, and those that could not be taken out. */
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
      const leave = (why: string) =>
        left.push({ sheet: sheet.name, cell: cellName(row, col), why });
      try {
        if (cell) sheet.setValue(row, col, cell.value);
      } catch (problem) {
        if (!(problem instanceof RangeError)) throw problem;
        leave(`left with its formula: ${problem.message}`);
      }
      if (cell?.value === null)
        leave(
          "blank now, since no value was stored with the formula: recalculate the original in a spreadsheet program, save it, and copy again",
        );
    }
  }
  return { bytes: workbook.save(), left };
}
