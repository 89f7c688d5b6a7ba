import { parseAddress, rectangleText } from "../cells";
import type { Desk } from "./desk";
import { mostCols, mostRows } from "./extent";

/** Goes where a typed address leads. Throws a RangeError that says what to type instead. */
export function goTo({ book, sheet }: Desk, text: string): void {
  const place = parseAddress(text);
  if (!place) throw new RangeError(`"${text}" is no cell: type an address such as C5 or Fans!C5.`);
  const { sheet: named, range } = place;
  const wanted = (named ?? sheet.name).toLowerCase();
  const found = book.shownSheets.find(({ name }) => name.toLowerCase() === wanted);
  if (!found) throw new RangeError(`The workbook shows no sheet "${named}".`);
  if (range.bottom >= mostRows || range.right >= mostCols)
    throw new RangeError(`The grid goes to row ${mostRows} and column ${mostCols}.`);
  book.select(found.name, rectangleText(range));
}
