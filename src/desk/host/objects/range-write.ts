import { isValidFormat } from "numfmt";
import { cellName } from "../../../cells";
import { type Content, readContent } from "../cells/content";
import { spread } from "../cells/spread";
import type { CellEdit } from "../cells/write";
import type { HostRange } from "../host-range";
import type { OpenBook } from "../open-book";
import { invalidArgument } from "../wire/errors";

/**
 * Writes values or formulas as a client assigns them: texts are read as if typed, null leaves a
 * cell alone, "" empties it.
 */
export function writeContents(book: OpenBook, range: HostRange, assigned: unknown): void {
  const { tab } = range;
  const at = spread(range, assigned);
  const edits: CellEdit[] = [];
  range.forEach((row, col) => {
    const given = at(row, col);
    if (given === null) return;
    edits.push({ tab, row, col, content: contentFrom(book, range, row, col, given) });
  });
  book.cells.apply(edits);
}

function contentFrom(
  book: OpenBook,
  { tab }: HostRange,
  row: number,
  col: number,
  given: unknown,
): Content {
  const isText = book.formats.isText(tab, row, col);
  // A cell formatted as text keeps whatever comes as text.
  if (typeof given === "number") return { value: isText ? String(given) : given };
  if (typeof given === "boolean") return { value: isText ? String(given).toUpperCase() : given };
  if (typeof given !== "string")
    throw invalidArgument(`${cellName(row, col)} takes a number, a text or TRUE or FALSE.`);
  return readContent(given, isText, book.workbook.date1904);
}

export function writeNumberFormats(book: OpenBook, range: HostRange, assigned: unknown): void {
  const at = Array.isArray(assigned) ? spread(range, assigned) : () => assigned;
  book.formats.changeEach(range, (row, col) => {
    const code = at(row, col);
    if (code === null) return null;
    if (typeof code !== "string" || !isValidFormat(code))
      throw invalidArgument(`"${String(code)}" is no number format.`);
    return { numberFormat: code };
  });
}
