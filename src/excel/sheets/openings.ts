import { maxRows } from "../../cells";
import {
  boxesLayout,
  firstRow,
  formulasOf,
  type Grid,
  type Job,
  jobTitle,
  plainPlan,
  type SheetFit,
} from "../../job";
import { asText } from "../cell-text";
import { HostError } from "../host-error";
import { readWorkbook } from "../reading";
import { type Book, run } from "../run";
import type { PlannedBox } from "../types";
import { checkWritable, sheetToWrite } from "../writable";
import { without } from "./job-sheets";
import { addSheet, checkStructure, freeName } from "./own-sheet";
import { layOut } from "./table-sheet";
import { type Written, writeRows } from "./write-blocks";

type Table = NonNullable<Job["tables"]["boxes"]>;

/** The sheet that openings are appended to: the last one, where there are several. */
interface Target {
  readonly table: Table;
  readonly fit: SheetFit;
  readonly grid: Grid;
}

type Values = Readonly<Record<string, string | number | undefined>>;

const how = "planned";

/**
 * Appends planned openings of a box to the sheet that serves as Boxes, or to a new one, selects the
 * first. Formulas of that sheet are carried on; where it has none, values are written.
 */
export async function writeOpenings(plan: PlannedBox): Promise<void> {
  if (plan.openings.length === 0) return;
  const { file } = await readWorkbook();
  const { readJob } = await import("../../job/engine");
  const job = readJob(file);
  const table = job.tables.boxes;
  const fit = job.fit.sheets.boxes?.at(-1);
  const grid = file.sheets.find(({ name }) => name === fit?.sheet);
  if (!table || !fit || !grid) return run((book) => addBoxes(book, job, plan));
  refuseKnown(job, table, plan);
  await run((book) => append(book, { table, fit, grid }, valuesOf(job, plan)));
}

/** The fields of each opening, in the job's units. */
function valuesOf(job: Job, { box, openings, constant, face }: PlannedBox): Values[] {
  const own = constant ?? job.boxes?.constant(box) ?? Number.NaN;
  return openings.map(({ label, shape, size, count, area, reach }) => ({
    box: asText(box),
    opening: asText(label),
    shape,
    size1: size,
    size2: shape === "rectangular" ? size : undefined,
    count,
    area,
    constant: own > 0 ? own : undefined,
    how,
    lowest: reach.lowest,
    highest: reach.highest,
    face,
  }));
}

function refuseKnown(job: Job, table: Table, { box, openings }: PlannedBox): void {
  const known = (job.boxes?.rows(box) ?? []).map((i) => table.text("opening", i).toLowerCase());
  const twice = openings
    .map(({ label }) => label)
    .filter((label) => known.includes(label.toLowerCase()));
  if (twice.length > 0)
    throw new HostError(
      "ItemAlreadyExists",
      `${box} has an opening ${twice.join(", ")} on ${table.name} already. Give the planned box another name.`,
    );
}

/** Columns without a formula of their own that one of another column may fill as well. */
const filledBy: Readonly<Record<string, string>> = { highest: "lowest" };

async function append(book: Book, target: Target, openings: readonly Values[]): Promise<void> {
  const { table, fit, grid } = target;
  const top = firstFreeRow(target, openings.length);
  const sheet = sheetToWrite(book, grid.name);
  const columns = table.layout.fields.flatMap((field) => {
    const col = fit.columns.get(field.key)?.col;
    return col === undefined
      ? []
      : [{ field, col, range: sheet.getRangeByIndexes(top, col, openings.length, 1) }];
  });
  await book.sync();
  await checkWritable(
    book,
    sheet,
    grid.name,
    columns.map(({ range }) => range),
  );
  await book.keep(
    sheet.name,
    columns.map(({ range }) => range),
  );
  book.holdCalculation();
  const model = (key: string) => formulaRow(target, key, top);
  for (const { field, col, range } of columns) {
    const { key } = field;
    const row = field.is ? model(key) : undefined;
    if (row !== undefined) range.copyFrom(sheet.getRangeByIndexes(row, col, 1, 1), "Formulas");
    else if (!field.is || model(filledBy[key] ?? "") === undefined)
      range.values = openings.map((opening, i) => [
        // A formula that stands ready in a column for typed values is kept.
        grid.formula(top + i, col) === null ? stored(table, key, opening[key]) : null,
      ]);
  }
  if (sheet.visibility === "Visible") columns[0]?.range.getCell(0, 0).select();
  await book.sync();
}

/** The row whose formula is carried on: that of the last opening, or the first new row itself. */
function formulaRow({ table, fit, grid }: Target, key: string, top: number): number | undefined {
  const col = fit.columns.get(key)?.col;
  if (col === undefined) return undefined;
  return [lastRow(table, grid), top].find(
    (row) => row !== undefined && grid.formula(row, col) !== null,
  );
}

/** A value in the unit of its column; null where there is none. */
function stored(table: Table, key: string, value: string | number | undefined): Written {
  if (typeof value === "number") return value / table.factor(key);
  return value ?? null;
}

/** The first of so many rows below the last opening that nobody has typed in. */
function firstFreeRow(target: Target, count: number): number {
  const { table, fit, grid } = target;
  let top = (lastRow(table, grid) ?? fit.headerRow) + 1;
  for (let row = top; row < Math.min(grid.rowCount, top + count); row++)
    if (isTypedIn(target, row)) top = row + 1;
  if (top + count >= maxRows)
    throw new HostError("InvalidArgument", `${grid.name} has no room for more rows.`);
  return top;
}

function lastRow(table: Table, grid: Grid): number | undefined {
  const home = table.length > 0 ? table.home(table.length - 1) : undefined;
  return home?.grid.name === grid.name ? home.row : undefined;
}

/** Whether anything but results stands in a row. */
function isTypedIn({ grid, fit, table }: Target, row: number): boolean {
  const computed = table.layout.fields.flatMap(({ key, is }) =>
    is ? [fit.columns.get(key)?.col] : [],
  );
  for (let col = 0; col < grid.colCount; col++) {
    const value = grid.value(row, col);
    if (value === null || value === "" || computed.includes(col)) continue;
    if (grid.formula(row, col) === null) return true;
  }
  return false;
}

async function addBoxes(book: Book, job: Job, plan: PlannedBox): Promise<void> {
  await checkStructure(book);
  const names = job.file.sheets.map(({ name }) => name);
  // The formulas take the pressure window and the units from the Job sheet.
  const absent = names.includes(jobTitle) ? [] : [jobTitle];
  const layout = plainPlan.boxes;
  const { fields } = layout;
  const formulas = (row: number) =>
    without(absent, formulasOf("boxes", row, { fans: 1, boxes: 1 }, plainPlan));
  const sheet = addSheet(book, freeName(boxesLayout.title, names));
  await layOut(book, sheet, {
    layout,
    system: job.settings.system,
    rows: plan.openings.length,
    formulas,
  });
  const rows = valuesOf(job, plan).map((values, i) => {
    const own = formulas(firstRow + i);
    return fields.map(({ key }): Written => {
      const isByFormula = own[key] !== undefined || own[filledBy[key] ?? ""] !== undefined;
      return isByFormula ? null : (values[key] ?? null);
    });
  });
  await writeRows(book, sheet, firstRow, 0, rows);
  sheet.getRangeByIndexes(firstRow, 0, 1, 1).select();
  await book.sync();
}
