import { SheetModel } from "../sheet";
import type { Sheet, Workbook } from "../workbook";

/**
 * Works out the formulas of added sheets and stores what they give, so that they show values before
 * any recalculation. All other cells count as they are stored: their formulas are not evaluated.
 */
export function storeValues(workbook: Workbook, added: readonly Sheet[]): void {
  if (added.length === 0) return;
  const view = workbook.sheets.map((sheet) => (added.includes(sheet) ? sheet : valuesOf(sheet)));
  const model = new SheetModel(
    {
      sheets: view,
      sheet: (name) => view.find((sheet) => sheet.name.toLowerCase() === name.toLowerCase()),
      names: workbook.names,
      tables: workbook.tables,
      date1904: workbook.date1904,
    },
    [],
  );
  model.recalculateAll();
}

/** The sheet as if it held no formulas. */
function valuesOf(sheet: Sheet): Sheet {
  const visit: Sheet["visit"] = (see) =>
    sheet.visit((row, col, value) => see(row, col, value, null, null));
  return new Proxy(sheet, {
    get(target, key) {
      if (key === "visit") return visit;
      const member: unknown = Reflect.get(target, key, target);
      return typeof member === "function" ? member.bind(target) : member;
    },
  });
}
