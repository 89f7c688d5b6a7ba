import {
  type FeatureKey,
  firstRow,
  formulasOf,
  headingOf,
  type JobPlan,
  type JobSize,
  type JobStart,
  jobPlan,
  jobSettings,
  jobTitle,
  pageOf,
  pointsOf,
  type RowFormulas,
  type SheetKind,
  type SheetLayout,
  settingChoices,
  settingHeight,
  settingRow,
  settingsPage,
  settingsWidths,
  usualSettings,
} from "../../job";
import { blankSheets } from "../blank-sheets";
import { HostError } from "../host-error";
import { type Book, run } from "../run";
import type { System } from "../types";
import { addSheet, checkStructure } from "./own-sheet";
import { pageRefused, setUpPage } from "./page";
import { dressHeadings, layOut } from "./table-sheet";
import { writeRows } from "./write-blocks";

/** The sheets of a new job with these features, in their order. */
function jobSheetNames(features: readonly FeatureKey[] = []): string[] {
  return [jobTitle, ...layoutsOf(jobPlan(features)).map(({ title }) => title)];
}

/** Rows that get formulas, where nothing else is asked for. */
const usualRows = {
  dwellings: 20,
  boxes: 12,
  fans: 60,
  instruments: 6,
  pairs: 30,
  registers: 40,
  catalogue: 20,
  schedule: 60,
  totals: 12,
} as const satisfies JobSize & Record<SheetKind, number>;

/** Lookups cover so many rows more, so that rows added below are found. */
const headroom = 100;

const layoutsOf = (plan: JobPlan): SheetLayout[] => Object.values(plan);

/**
 * Adds the sheets of a job: Job, Dwellings, Boxes and Fans, and those that the features want, with
 * headings, formulas in as many rows as asked for and drop-down lists, and goes to the first
 * dwelling. Returns the names of those added. A sheet that is there already is left as it is; where
 * it is not laid out as ours would be, formulas that would look into it are left out. The blank
 * sheets of an empty workbook give way. Refuses where all names are taken, and tells of pages that
 * cannot be set up.
 */
export function addJobSheets(
  start: JobStart,
  tell: (note: string) => void = () => {},
): Promise<readonly string[]> {
  const { system, features = [] } = start;
  const rows = {
    ...usualRows,
    dwellings: start.dwellings ?? usualRows.dwellings,
    fans: start.fans ?? usualRows.fans,
  };
  const size = Object.fromEntries(
    Object.entries(rows).map(([kind, count]) => [kind, count + headroom]),
  ) as Partial<JobSize> as JobSize;
  return run(async (book) => {
    const blank = await blankSheets(book);
    const plan = jobPlan(features);
    const names = jobSheetNames(features);
    const there = await sheetsThere(book, system, plan);
    const wanted = names.filter((name) => !there.has(name.toLowerCase()));
    if (wanted.length === 0)
      throw new HostError(
        "ItemAlreadyExists",
        `The workbook has sheets named ${names.join(", ")} already: nothing was added.`,
      );
    await checkStructure(book);
    const foreign = names.filter((name) => there.get(name.toLowerCase()) === false);
    // All sheets first: a formula may look only into a sheet that is there.
    const added = new Map(wanted.map((name) => [name, addSheet(book, name)]));
    const job = added.get(jobTitle);
    if (job) await fillSettings(book, job, start);
    for (const layout of layoutsOf(plan)) {
      const sheet = added.get(layout.title);
      const own = (row: number) => without(foreign, formulasOf(layout.kind, row, size, plan));
      if (sheet)
        await layOut(book, sheet, { layout, system, rows: rows[layout.kind], formulas: own });
    }
    await book.sync();
    const first = added.get(plan.dwellings.title);
    first?.activate();
    first?.getRangeByIndexes(firstRow, 0, 1, 1).select();
    for (const sheet of blank) sheet.delete();
    // The sheets stand, whatever becomes of the view and, as without a printer, of the page.
    await book.sync().catch(() => {});
    for (const layout of layoutsOf(plan)) {
      const sheet = added.get(layout.title);
      if (sheet) setUpPage(sheet, pageOf(layout, system, rows[layout.kind]));
    }
    if (job) setUpPage(job, settingsPage(system));
    await book.sync().catch((thrown) => tell(pageRefused(thrown)));
    return wanted;
  });
}

/** Formulas that look into none of some sheets. */
export function without(sheets: readonly string[], formulas: RowFormulas): RowFormulas {
  return Object.fromEntries(
    Object.entries(formulas).filter(
      ([, formula]) => !sheets.some((name) => formula.includes(`${name}!`)),
    ),
  );
}

/** By lower-case name, whether each job sheet that is there is laid out as ours. */
async function sheetsThere(
  book: Book,
  system: System,
  plan: JobPlan,
): Promise<Map<string, boolean>> {
  const asked = [jobTitle, ...layoutsOf(plan).map(({ title }) => title)].map((name) => {
    const sheet = book.sheets.getItemOrNullObject(name);
    sheet.load("name");
    const expected = expectedCells(name, system, plan);
    const range = sheet.getRangeByIndexes(0, 0, expected.length, expected[0]?.length ?? 1);
    range.load("values");
    return { name, sheet, range, expected };
  });
  await book.sync();
  return new Map(
    asked
      .filter(({ sheet }) => !sheet.isNullObject)
      .map(({ name, range, expected }) => [
        name.toLowerCase(),
        expected.every((line, r) => line.every((text, c) => range.values[r]?.[c] === text)),
      ]),
  );
}

/** The cells by which a sheet of ours is known: its headings, or the labels of the settings. */
function expectedCells(name: string, system: System, plan: JobPlan): string[][] {
  const layout = layoutsOf(plan).find(({ title }) => title === name);
  if (layout) return [layout.fields.map((field) => headingOf(field, system))];
  return [["Setting"], ...jobSettings.map(({ label }) => [label])];
}

async function fillSettings(
  book: Book,
  sheet: Excel.Worksheet,
  { system, name, edition }: JobStart,
): Promise<void> {
  const usual: Readonly<Record<string, string | number | undefined>> = {
    ...usualSettings(system),
    name,
    edition,
  };
  const lines = jobSettings.map(({ key, label, help }) => [label, usual[key] ?? "", help]);
  dressHeadings(sheet, 3);
  settingsWidths.forEach((width, col) => {
    sheet.getRangeByIndexes(0, col, 1, 1).format.columnWidth = pointsOf(width);
  });
  const below = (col: number) => sheet.getRangeByIndexes(1, col, lines.length, 1).format;
  for (const col of settingsWidths.keys()) below(col).verticalAlignment = "Top";
  below(1).horizontalAlignment = "Left";
  below(2).wrapText = true;
  for (const { key, help } of jobSettings)
    sheet.getRangeByIndexes(settingRow(key), 0, 1, 1).format.rowHeight = settingHeight(help);
  for (const [key, entries] of Object.entries(settingChoices))
    sheet.getRangeByIndexes(settingRow(key), 1, 1, 1).dataValidation.rule = {
      list: { inCellDropDown: true, source: entries.join(",") },
    };
  for (const { key, format } of jobSettings)
    if (format) sheet.getRangeByIndexes(settingRow(key), 1, 1, 1).numberFormat = [[format]];
  sheet.freezePanes.freezeRows(1);
  await writeRows(book, sheet, 0, 0, [["Setting", "Value", "What it means"], ...lines]);
}
