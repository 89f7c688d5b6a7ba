import { type FitChoice, fitSheetTitle, layouts } from "../../job";
import { asText } from "../cell-text";
import { HostError } from "../host-error";
import { run } from "../run";
import { checkWritable, sheetToWrite } from "../writable";
import { addSheet, checkStructure } from "./own-sheet";
import { type Written, writeRows } from "./write-blocks";

const headings = ["Sheet", "Heading", "Field"];

/**
 * Keeps choices of which heading stands for which field on the Fit sheet. A choice takes the place
 * of an earlier one for the same heading of the same sheet; all others stay.
 */
export function saveFit(choices: readonly FitChoice[]): Promise<void> {
  return run(async (book) => {
    const sheet = sheetToWrite(book, fitSheetTitle);
    const used = sheet.getUsedRangeOrNullObject(true);
    used.load("rowIndex,columnIndex,values");
    await book.sync();
    if (sheet.isNullObject) {
      await checkStructure(book);
      const added = addSheet(book, fitSheetTitle);
      added.getRangeByIndexes(0, 0, 1, headings.length).format.font.bold = true;
      await writeRows(book, added, 0, 0, [headings, ...merged([], choices)]);
      return;
    }
    const lines = used.isNullObject ? [] : used.values;
    const isOurs =
      lines.length === 0 ||
      (used.rowIndex === 0 &&
        used.columnIndex === 0 &&
        headings.every((h, i) => lines[0]?.[i] === h));
    if (!isOurs)
      throw new HostError(
        "ItemAlreadyExists",
        `The workbook has a sheet ${fitSheetTitle} of another kind. Rename it, then save the fit again.`,
      );
    const before = lines.slice(1).map((line) => headings.map((_, i) => String(line[i] ?? "")));
    const rows = merged(before, choices);
    const block = sheet.getRangeByIndexes(0, 0, rows.length + 1, headings.length);
    await checkWritable(book, sheet, fitSheetTitle, [block]);
    await book.keep(sheet.name, [block]);
    await writeRows(book, sheet, 0, 0, [headings, ...rows]);
  });
}

/** The kept choices with new ones in place of those for the same heading. */
function merged(before: readonly string[][], choices: readonly FitChoice[]): Written[][] {
  const rows = before.map((row) => [...row]);
  for (const { sheet, heading, field } of choices) {
    const row = [sheet, heading, titleOf(field)];
    const at = rows.findIndex(
      ([itsSheet, itsHeading]) => same(itsSheet, sheet) && same(itsHeading, heading),
    );
    if (at < 0) rows.push(row);
    else rows[at] = row;
  }
  return rows.map((row) => row.map(asText));
}

function same(a: string | undefined, b: string): boolean {
  return a?.trim().toLowerCase() === b.trim().toLowerCase();
}

/** The title under which a field is read back; "" for a heading that stands for nothing. */
function titleOf(key: string): string {
  if (key === "") return "";
  const field = layouts.flatMap(({ fields }) => fields).find((entry) => entry.key === key);
  if (!field) throw new HostError("InvalidArgument", `No sheet of a job has a field "${key}".`);
  return field.title;
}
