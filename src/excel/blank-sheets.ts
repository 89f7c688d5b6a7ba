import { type Book, run } from "./run";

/** Whether nothing stands in the open workbook. */
export function isEmptyWorkbook(): Promise<boolean> {
  return run(async (book) => (await blankSheets(book)).length > 0, { waitsForEdit: true });
}

/** All sheets of a workbook in which nothing stands; none of any other. */
export async function blankSheets(book: Book): Promise<readonly Excel.Worksheet[]> {
  book.sheets.load("items/name");
  await book.sync();
  const used = book.sheets.items.map((sheet) => sheet.getUsedRangeOrNullObject(true));
  for (const range of used) range.load("address");
  await book.sync();
  return used.every((range) => range.isNullObject) ? book.sheets.items : [];
}
