import type { Book } from "../run";

/** The sheet a line works on: its own, empty when it starts. */
export interface Ground {
  readonly book: Book;
  readonly sheet: Excel.Worksheet;
}

/** One thing that is tried in the host, with what must come of it. */
export interface Line {
  readonly name: string;
  /** What must come: a text; what fits a pattern, in words; or null where the host is only asked to tell. */
  readonly expected: string | { readonly words: string; readonly pattern: RegExp } | null;
  /** How long it may take, in seconds. */
  readonly limit?: number;
  readonly run: (ground: Ground) => Promise<string>;
}

/** How a cell's value reads in a report: "blank" for an empty one. */
export function told(value: unknown): string {
  return value === "" || value === null || value === undefined ? "blank" : String(value);
}

/** Writes formulas or values into rows from A1 on, and reads what another range then holds. */
export async function cells(
  { book, sheet }: Ground,
  rows: readonly (readonly (string | number | boolean)[])[],
  asked: string,
): Promise<string> {
  const first = rows[0];
  if (first) {
    const target = sheet.getRange("A1").getResizedRange(rows.length - 1, first.length - 1);
    target.formulas = rows.map((row) => [...row]);
  }
  return read({ book, sheet }, asked);
}

/** What a range holds, once nothing in it is still being worked out. */
export async function read({ book, sheet }: Ground, asked: string): Promise<string> {
  const range = sheet.getRange(asked);
  for (;;) {
    range.load("values");
    await book.sync();
    const values = range.values.flat();
    if (!values.some((value) => value === "#BUSY!" || value === "#GETTING_DATA"))
      return values.map(told).join(", ");
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
}
