import { sheetGone, sheetProtected } from "./host-error";
import type { Book } from "./run";

/** A sheet by its name, with what must be known before writing on it; to be loaded with a sync. */
export function sheetToWrite(book: Book, name: string): Excel.Worksheet {
  const sheet = book.sheets.getItemOrNullObject(name);
  sheet.load("name,visibility,protection/protected");
  return sheet;
}

/**
 * Refuses to go on where the sheet is gone, or protected with one of the cells locked. Asks for
 * the locks only on a protected sheet.
 */
export async function checkWritable(
  book: Book,
  sheet: Excel.Worksheet,
  name: string,
  cells: readonly Excel.Range[],
): Promise<void> {
  if (sheet.isNullObject) throw sheetGone(name);
  if (!sheet.protection.protected) return;
  const locks = cells.map((cell) => cell.format.protection);
  for (const lock of locks) lock.load("locked");
  await book.sync();
  // null: some of the cells are locked.
  if (locks.length === 0 || locks.some((lock) => lock.locked !== false))
    throw sheetProtected(sheet.name);
}
