import { type Rectangle, rectanglesIn, rectangleText } from "../../cells";
import type { Book } from "../run";

/** Excel cuts the address of many areas off at 8,192 characters: one as long as this may have lost some. */
const longestSure = 8_000;
/** Rows whose areas are few enough to be named whole, and how many such pieces one response holds. */
const rowsAPiece = 64;
const piecesATrip = 200;

/** What areas cover, their address being loaded; undefined where it may have been cut off. */
export function rectanglesOf(areas: Excel.RangeAreas): readonly Rectangle[] | undefined {
  if (areas.isNullObject) return [];
  return areas.address.length > longestSure ? undefined : rectanglesIn(areas.address);
}

/** The areas of a kind in a range that has too many of them to name at once. */
export async function areasInPieces(
  book: Book,
  whole: Excel.Range,
  ask: (piece: Excel.Range) => Excel.RangeAreas,
): Promise<readonly Rectangle[]> {
  const found = new Map<string, Rectangle>();
  const { rowCount } = whole;
  let row = 0;
  while (row < rowCount) {
    const asked: Excel.RangeAreas[] = [];
    for (; row < rowCount && asked.length < piecesATrip; row += rowsAPiece) {
      const more = Math.min(rowsAPiece, rowCount - row) - 1;
      const areas = ask(whole.getRow(row).getResizedRange(more, 0));
      areas.load("address");
      asked.push(areas);
    }
    await book.sync();
    for (const areas of asked)
      for (const area of rectanglesOf(areas) ?? []) found.set(rectangleText(area), area);
  }
  return [...found.values()];
}
