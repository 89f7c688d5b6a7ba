import { HostError } from "../host-error";
import type { Book } from "../run";

/** A sheet of our own making, or the name under which it can be added. */
type OwnSheet =
  | { readonly found: Excel.Worksheet; readonly isProtected: boolean }
  | { readonly freeName: string };

/**
 * Looks for a sheet of ours by its heading row, whose cells must read exactly so. Where a sheet of
 * someone else has the name, "Name 2" and so on are looked at too.
 */
export async function findOwnSheet(
  book: Book,
  title: string,
  headings: readonly string[],
): Promise<OwnSheet> {
  book.sheets.load("items/name,items/protection/protected");
  await book.sync();
  const wanted = new RegExp(`^${title}( \\d+)?$`, "i");
  const named = book.sheets.items.filter(({ name }) => wanted.test(name));
  const rows = named.map((sheet) => {
    const row = sheet.getRangeByIndexes(0, 0, 1, headings.length);
    row.load("values");
    return row;
  });
  if (rows.length > 0) await book.sync();
  const at = rows.findIndex((row) => headings.every((text, i) => row.values[0]?.[i] === text));
  const found = named[at];
  if (found) return { found, isProtected: found.protection.protected };
  return {
    freeName: freeName(
      title,
      book.sheets.items.map(({ name }) => name),
    ),
  };
}

/** The title, or the first of "Title 2", "Title 3" … that no sheet has. */
export function freeName(title: string, taken: readonly string[]): string {
  const names = new Set(taken.map((name) => name.toLowerCase()));
  let name = title;
  for (let number = 2; names.has(name.toLowerCase()); number++) name = `${title} ${number}`;
  return name;
}

/** Adds a sheet after the last, which goes again where what is to stand on it is refused. */
export function addSheet(book: Book, name: string): Excel.Worksheet {
  book.begun.adds(name);
  return book.sheets.add(name);
}

/** Refuses to add sheets to a workbook whose structure is protected. */
export async function checkStructure(book: Book): Promise<void> {
  const { protection } = book.workbook;
  protection.load("protected");
  await book.sync();
  if (protection.protected)
    throw new HostError(
      "WorkbookProtected",
      "The structure of the workbook is protected, so no sheet can be added: lift that on the Review tab (Protect Workbook), then try again.",
    );
}
