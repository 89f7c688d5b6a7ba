import {
  dwellingFormulas,
  dwellingsLayout,
  fanFormulas,
  fansLayout,
  firstRow,
  type RowFormulas,
  type SheetLayout,
} from "../../src/job";
import { type CellSpec, type Sheet, Workbook } from "../../src/workbook";
import { demo } from "./demo";

/**
 * The demo job's rows over and over, up to so many fans, with formulas of their own row. The
 * values are those stored in the demo: nothing is recalculated.
 */
export function largeJob(fans: number): Workbook {
  const small = demo();
  const workbook = Workbook.create();
  const fanSheet = small.sheet(fansLayout.title) as Sheet;
  const copies = Math.ceil(fans / (fanSheet.rowCount - firstRow));
  const size = { fans, boxes: 17 };
  workbook.addSheet("Job", { rows: copied(small.sheet("Job") as Sheet) });
  workbook.addSheet("Boxes", { rows: copied(small.sheet("Boxes") as Sheet) });
  const dwellings = small.sheet(dwellingsLayout.title) as Sheet;
  const many = (dwellings.rowCount - firstRow) * copies;
  workbook.addSheet(dwellingsLayout.title, {
    rows: repeated(dwellings, dwellingsLayout, many, (row) => dwellingFormulas(row, size)),
  });
  workbook.addSheet(fansLayout.title, {
    rows: repeated(fanSheet, fansLayout, fans, (row) => fanFormulas(row, size)),
  });
  return workbook;
}

function copied(sheet: Sheet): CellSpec[][] {
  return Array.from({ length: sheet.rowCount }, (_, row) => line(sheet, row));
}

function line(sheet: Sheet, row: number): CellSpec[] {
  return Array.from({ length: sheet.colCount }, (_, col): CellSpec => {
    const cell = sheet.cell(row, col);
    const value = cell?.value ?? null;
    return cell?.formula ? { formula: cell.formula, value } : { value };
  });
}

function repeated(
  sheet: Sheet,
  layout: SheetLayout,
  count: number,
  formulasOf: (row: number) => RowFormulas,
): CellSpec[][] {
  const sound = sheet.rowCount - firstRow;
  const rows = Array.from({ length: count }, (_, i): CellSpec[] => {
    const cells = line(sheet, firstRow + (i % sound));
    const formulas = formulasOf(firstRow + i);
    return cells.map((cell, col) => {
      const key = layout.fields[col]?.key ?? "";
      if (key === "dwelling") return { value: `${String(cell.value)}-${Math.floor(i / sound)}` };
      const formula = formulas[key];
      if (cell.formula === undefined || formula === undefined) return cell;
      return { ...cell, formula: formula.replaceAll("FANROW.", "_xldudf_FANROW_") };
    });
  });
  return [line(sheet, 0), ...rows];
}
