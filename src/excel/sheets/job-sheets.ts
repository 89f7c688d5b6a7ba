import {
  boxesLayout,
  dwellingFormulas,
  dwellingsLayout,
  fanFormulas,
  fansLayout,
  headingOf,
  type JobSize,
  jobSettings,
  jobTitle,
  openingFormulas,
  type RowFormulas,
  type SheetLayout,
  usualConstant,
  usualWindow,
} from "../../job";
import { HostError } from "../host-error";
import { type Book, run } from "../run";
import type { System } from "../types";
import { addSheet, checkStructure } from "./own-sheet";
import { dressHeadings, layOut } from "./table-sheet";
import { writeRows } from "./write-blocks";

/** The sheets of a new job, in their order. */
export const jobSheetNames: readonly string[] = [
  jobTitle,
  dwellingsLayout.title,
  boxesLayout.title,
  fansLayout.title,
];

const size: JobSize = { fans: 60, boxes: 12 };

interface JobTable {
  readonly layout: SheetLayout;
  /** Rows that get formulas. */
  readonly rows: number;
  readonly formulas: (row: number) => RowFormulas;
}

const tables: readonly JobTable[] = [
  { layout: dwellingsLayout, rows: 20, formulas: (row) => dwellingFormulas(row, size) },
  { layout: boxesLayout, rows: size.boxes, formulas: openingFormulas },
  { layout: fansLayout, rows: size.fans, formulas: (row) => fanFormulas(row, size) },
];

/**
 * Adds the sheets of a job: Job, Dwellings, Boxes and Fans, with headings, formulas for a few
 * dozen rows and drop-down lists. Returns the names of those added. A sheet that is there already
 * is left as it is; where it is not laid out as ours would be, formulas that would look into it
 * are left out. Refuses where all names are taken.
 */
export function addJobSheets(system: System): Promise<readonly string[]> {
  return run(async (book) => {
    const there = await sheetsThere(book, system);
    const wanted = jobSheetNames.filter((name) => !there.has(name.toLowerCase()));
    if (wanted.length === 0)
      throw new HostError(
        "ItemAlreadyExists",
        `The workbook has sheets named ${jobSheetNames.join(", ")} already: nothing was added.`,
      );
    await checkStructure(book);
    const foreign = jobSheetNames.filter((name) => there.get(name.toLowerCase()) === false);
    // All sheets first: a formula may look only into a sheet that is there.
    const added = new Map(wanted.map((name) => [name, addSheet(book, name)]));
    const job = added.get(jobTitle);
    if (job) await fillSettings(book, job, system);
    for (const { layout, rows, formulas } of tables) {
      const sheet = added.get(layout.title);
      const own = (row: number) => without(foreign, formulas(row));
      if (sheet) await layOut(book, sheet, { layout, system, rows, formulas: own });
    }
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
async function sheetsThere(book: Book, system: System): Promise<Map<string, boolean>> {
  const asked = jobSheetNames.map((name) => {
    const sheet = book.sheets.getItemOrNullObject(name);
    sheet.load("name");
    const expected = expectedCells(name, system);
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
function expectedCells(name: string, system: System): string[][] {
  const layout = [dwellingsLayout, boxesLayout, fansLayout].find(({ title }) => title === name);
  if (layout) return [layout.fields.map((field) => headingOf(field, system))];
  return [["Setting"], ...jobSettings.map(({ label }) => [label])];
}

async function fillSettings(book: Book, sheet: Excel.Worksheet, system: System): Promise<void> {
  const usual: Readonly<Record<string, string | number>> = {
    edition: "62.2-2016",
    units: system,
    low: usualWindow.low,
    high: usualWindow.high,
    constant: usualConstant[system],
    interval: 365,
  };
  const lines = jobSettings.map(({ key, label, help }) => [label, usual[key] ?? "", help]);
  dressHeadings(sheet, 3);
  [150, 180, 380].forEach((width, col) => {
    sheet.getRangeByIndexes(0, col, 1, 1).format.columnWidth = width;
  });
  const units = jobSettings.findIndex(({ key }) => key === "units");
  sheet.getRangeByIndexes(1 + units, 1, 1, 1).dataValidation.rule = {
    list: { inCellDropDown: true, source: "ip,si" },
  };
  sheet.freezePanes.freezeRows(1);
  await writeRows(book, sheet, 0, 0, [["Setting", "Value", "What it means"], ...lines]);
}
