import { worksheetFunctions } from "../../functions";
import {
  firstRow,
  formulasOf,
  headingOf,
  type JobPlan,
  type JobSize,
  jobTitle,
  layouts,
  type SheetLayout,
} from "../job";
import { inStoredForm, SheetModel } from "../sheet";
import { type Sheet, Workbook } from "../workbook";

/** What stands where a file's format could not hold a formula of our functions. */
const lostFormula = "NA()";

/**
 * A workbook that came through another format with values that it could not carry: formulas of our
 * functions that it lost are those of their column again, and all are worked out. One line says so.
 */
export function recovered(bytes: Uint8Array, kind: string) {
  const workbook = Workbook.open(bytes);
  const entered = enterAgain(workbook);
  const isOurs = ({ formula }: { readonly formula: string | null }) =>
    formula !== null && /fanrow/i.test(formula);
  if (!workbook.sheets.some((sheet) => [...sheet.cells()].some(isOurs))) return { bytes, said: [] };
  new SheetModel(workbook, worksheetFunctions).recalculateAll();
  const lost = entered > 0 ? ` ${entered} cells that lost theirs have that of their column.` : "";
  const said = `A ${kind} file keeps no values of Fanrow's functions: all formulas were worked out here, and no stored value is compared.${lost}`;
  return { bytes: workbook.save(), said: [said] };
}

/** Enters the formulas of a job's own form where they were lost; returns in how many cells. */
function enterAgain(workbook: Workbook): number {
  if (!workbook.sheet(jobTitle)) return 0;
  const found = layouts.flatMap((layout) => {
    const sheet = workbook.sheet(layout.title);
    const own = sheet && ownLayout(sheet, layout);
    return own ? [{ sheet, layout: own, rows: lastRow(sheet) }] : [];
  });
  const plan = Object.fromEntries(
    found.map(({ layout }) => [layout.kind, layout]),
  ) as Partial<JobPlan> as JobPlan;
  const size = Object.fromEntries(
    found.map(({ layout, rows }) => [layout.kind, rows]),
  ) as Partial<JobSize> as JobSize;
  let entered = 0;
  for (const { sheet, layout } of found)
    for (const { row, col, formula } of [...sheet.cells()]) {
      const field = layout.fields[col];
      if (formula !== lostFormula || !field?.is) continue;
      const text = formulasOf(layout.kind, row, size, plan)[field.key];
      if (text === undefined) continue;
      sheet.setFormula(row, col, inStoredForm(text, worksheetFunctions), null);
      entered++;
    }
  return entered;
}

/** The fields of a sheet in the order of its headings; undefined where one is not ours. */
function ownLayout(sheet: Sheet, layout: SheetLayout): SheetLayout | undefined {
  const fields: SheetLayout["fields"][number][] = [];
  for (let col = 0; ; col++) {
    const heading = sheet.cell(firstRow - 1, col)?.value ?? null;
    if (heading === null) return col > 0 ? { ...layout, fields } : undefined;
    const field = layout.fields.find((each) =>
      (["ip", "si"] as const).some((system) => headingOf(each, system) === heading),
    );
    if (!field) return undefined;
    fields.push(field);
  }
}

const lastRow = (sheet: Sheet) =>
  [...sheet.cells()].reduce(
    (last, { row, value }) => (value === null ? last : Math.max(last, row)),
    0,
  );
