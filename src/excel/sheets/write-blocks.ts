import type { Book } from "../run";

/** A cell as it is written: a formula with "=", a value, "" for a blank; null leaves it alone. */
export type Written = string | number | boolean | null;

/** Excel on the web takes at most 5 MB at once; the rest is leeway. */
const tripBytes = 4_000_000;

/** Writes rows of equal length in blocks that Excel takes, the first cell at `top`, `left`. */
export async function writeRows(
  book: Book,
  sheet: Excel.Worksheet,
  top: number,
  left: number,
  rows: readonly (readonly Written[])[],
): Promise<void> {
  const width = rows[0]?.length ?? 0;
  let first = 0;
  while (first < rows.length) {
    const block: Written[][] = [];
    let bytes = 0;
    for (let i = first; i < rows.length; i++) {
      const row = [...(rows[i] as readonly Written[])];
      bytes += bytesOf(row);
      if (block.length > 0 && bytes > tripBytes) break;
      block.push(row);
    }
    book.holdCalculation();
    sheet.getRangeByIndexes(top + first, left, block.length, width).formulas = block;
    await book.sync();
    first += block.length;
  }
}

function bytesOf(row: readonly Written[]): number {
  return new TextEncoder().encode(JSON.stringify(row)).length + 1;
}
