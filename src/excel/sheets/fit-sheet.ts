import { type FitChoice, fitHeadings, fitSheetTitle, rowOfChoice } from "../../job";
import { asText } from "../cell-text";
import { HostError } from "../host-error";
import { run } from "../run";
import { checkWritable, sheetToWrite } from "../writable";
import { addSheet, checkStructure } from "./own-sheet";
import { writeRows } from "./write-blocks";

/** Keeps a user's answers on the Fit sheet, in place of all that it held. */
export function saveFit(choices: readonly FitChoice[]): Promise<void> {
  return run(async (book) => {
    const rows = [[...fitHeadings], ...choices.map((choice) => rowOfChoice(choice).map(asText))];
    const sheet = sheetToWrite(book, fitSheetTitle);
    const used = sheet.getUsedRangeOrNullObject(true);
    used.load("rowIndex,columnIndex,values");
    await book.sync();
    if (sheet.isNullObject) {
      await checkStructure(book);
      const added = addSheet(book, fitSheetTitle);
      added.getRangeByIndexes(0, 0, 1, fitHeadings.length).format.font.bold = true;
      await writeRows(book, added, 0, 0, rows);
      return;
    }
    const lines = used.isNullObject ? [] : used.values;
    const isOurs =
      lines.length === 0 ||
      (used.rowIndex === 0 &&
        used.columnIndex === 0 &&
        fitHeadings.slice(0, 3).every((h, i) => lines[0]?.[i] === h));
    if (!isOurs)
      throw new HostError(
        "ItemAlreadyExists",
        `The workbook has a sheet ${fitSheetTitle} of another kind. Rename it, then save the fit again.`,
      );
    while (rows.length < lines.length) rows.push(fitHeadings.map(() => ""));
    const block = sheet.getRangeByIndexes(0, 0, rows.length, fitHeadings.length);
    await checkWritable(book, sheet, fitSheetTitle, [block]);
    await book.keep(sheet.name, [block]);
    await writeRows(book, sheet, 0, 0, rows);
  });
}
