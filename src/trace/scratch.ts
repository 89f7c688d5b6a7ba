import { worksheetFunctions } from "../../functions";
import { type CellValue, offsetOf, type Place, type Spot } from "../cells";
import type { JobFile } from "../job";
import { SheetModel, type WorkbookView } from "../sheet";
import { type CellVisitor, type Sheet, Workbook } from "../workbook";
import { wholeOf } from "./calls";
import { forEachUsed, gridOf, isReference, placeOf } from "./places";

/** A value, or why there is none. */
export type Evaluated = { readonly value: CellValue } | { readonly why: string };

/** These ask of cells more than their values: formulas, hidden rows. */
const asksMore = new Set(["SUBTOTAL", "AGGREGATE", "FORMULATEXT", "ISFORMULA"]);

/**
 * Works out a formula (in its typed form, without "=") as if it stood in a cell, from the stored
 * values it reads. A scratch workbook holds those cells and nothing else.
 */
export function evaluateAt(formula: string, at: Spot, file: JobFile): Evaluated {
  const home = gridOf(file, at.sheet);
  if (!home) return { why: `the sheet ${at.sheet} is not in the workbook` };
  const { tokens } = wholeOf(formula);
  const more = tokens.find(({ value }) => value === "#" || asksMore.has(value.toUpperCase()));
  if (more)
    return { why: more.value === "#" ? "a spilled range (#)" : `the function ${more.value}` };
  const places = tokens
    .filter(isReference)
    .flatMap((token) => placeOf(token.value, home.name, file) ?? []);
  const model = new SheetModel(
    viewOf(formula, { ...at, sheet: home.name }, places, file),
    worksheetFunctions,
  );
  const found = model.recompute(home.name, at.row, at.col);
  return "unsupported" in found ? { why: found.unsupported } : found;
}

/** What the sheets of every scratch workbook have in common. */
let blank: Sheet | undefined;

function viewOf(formula: string, at: Spot, places: readonly Place[], file: JobFile): WorkbookView {
  blank ??= Workbook.create().addSheet("scratch", { rows: [] });
  const own = blank;
  const sheets = file.sheets.map(({ name, rowCount, colCount }) => {
    const visit = (see: CellVisitor) => {
      for (const place of places)
        if (place.sheet === name)
          forEachUsed(place, file, (row, col, value) => {
            if (value !== null) see(row, col, value, null, null);
          });
      if (name === at.sheet) see(at.row, at.col, null, formula, null);
    };
    return sheetLike(own, { name, rowCount, colCount, visit });
  });
  return {
    sheets,
    sheet: (name) => sheets.find((sheet) => sheet.name.toLowerCase() === name.toLowerCase()),
    names: [],
    tables: [],
    date1904: file.dateOffset === offsetOf(true),
  };
}

type Read = Pick<Sheet, "name" | "rowCount" | "colCount" | "visit">;

/** A sheet that is only read: to write its cells into a package first would cost far more. */
function sheetLike(common: Sheet, { name, rowCount, colCount, visit }: Read): Sheet {
  return Object.create(common, {
    name: { value: name },
    rowCount: { value: rowCount },
    colCount: { value: colCount },
    hiddenRows: { value: new Set<number>() },
    visit: { value: visit },
  }) as Sheet;
}
