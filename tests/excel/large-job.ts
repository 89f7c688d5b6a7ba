import { firstRow, formulasOf, plainPlan, type RowFormulas, type SheetLayout } from "../../src/job";
import { type CellSpec, type Sheet, Workbook } from "../../src/workbook";
import { demo } from "./demo";

/**
 * The demo job's rows over and over, up to so many fans, with formulas of their own row. The
 * values are those stored in the demo: nothing is recalculated.
 */
export function largeJob(fans: number): Workbook {
  const small = demo();
  const workbook = Workbook.create();
  const fanSheet = small.sheet(plainPlan.fans.title) as Sheet;
  const copies = Math.ceil(fans / (fanSheet.rowCount - firstRow));
  const size = { fans, boxes: 17 };
  workbook.addSheet("Job", { rows: copied(small.sheet("Job") as Sheet) });
  workbook.addSheet("Boxes", { rows: copied(small.sheet("Boxes") as Sheet) });
  for (const [kind, count] of [
    ["dwellings", (small.sheet(plainPlan.dwellings.title) as Sheet).rowCount - firstRow],
    ["fans", fans],
  ] as const) {
    const layout = plainPlan[kind];
    const rows = kind === "fans" ? count : count * copies;
    const own = (row: number) => formulasOf(kind, row, size, plainPlan);
    workbook.addSheet(layout.title, {
      rows: repeated(small.sheet(layout.title) as Sheet, layout, rows, own),
    });
  }
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
  ownFormulas: (row: number) => RowFormulas,
): CellSpec[][] {
  const sound = sheet.rowCount - firstRow;
  const rows = Array.from({ length: count }, (_, i): CellSpec[] => {
    const cells = line(sheet, firstRow + (i % sound));
    const formulas = ownFormulas(firstRow + i);
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
