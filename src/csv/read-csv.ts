import Papa from "papaparse";
import { cellName, InputError, longestText, maxCols, maxRows } from "../cells";
import { type CellSpec, Workbook } from "../workbook";
import { type CsvHabits, isDay, readCell } from "./read-cell";

/** A text file that cannot be taken as a table; the message says why. */
export class CsvError extends InputError {}

/** A decimal comma for certain, a decimal point for certain, either a comma of decimals or of thousands. */
const decimals = [
  /^[-+]?(\d{1,3}(\.\d{3})+|\d+),(\d{1,2}|\d{4,})$/,
  /^[-+]?(\d{1,3}(,\d{3})+|\d+)\.(\d{1,2}|\d{4,})$/,
  /^[-+]?\d+,\d{3}$/,
];
/** The line by which some programs tell which sign parts the cells. */
const partedBy = /^sep=(.)\r?\n/i;
/** The first rows tell how the file writes its numbers, and how wide its columns are. */
const mostLookedAt = 500;
const tooManyRows = "has more rows than a sheet has";

/**
 * The table of a text file as a workbook of one sheet. Commas, semicolons and tabs part the cells;
 * UTF-8, UTF-16 and the code page of Windows are read. `name` is that of the sheet.
 */
export function workbookOfCsv(bytes: Uint8Array, name: string): Workbook {
  const text = textOf(bytes);
  const [line = "", delimiter] = partedBy.exec(text) ?? [];
  // Line ends after the last row would count as a row of one cell in the search for the sign.
  let end = text.length;
  while (end > line.length && /[\r\n]/.test(text[end - 1] ?? "")) end--;
  const table = text.slice(line.length, end);
  // Within quotation marks a line may end without the row.
  if (!table.includes('"') && endsMoreLines(table, maxRows)) throw new CsvError(tooManyRows);
  const { data, errors, meta } = Papa.parse<string[]>(table, {
    skipEmptyLines: false,
    preview: maxRows + 1,
    ...(delimiter === undefined ? {} : { delimiter }),
  });
  const broken = errors.find(({ type }) => type === "Quotes");
  if (broken)
    throw new CsvError(
      `row ${(broken.row ?? 0) + 1} opens a quotation mark that is never closed: mend it in a text editor`,
    );
  while (data.length > 0 && data.at(-1)?.every((cell) => cell.trim() === "")) data.pop();
  if (data.length === 0) throw new CsvError("holds no rows");
  const wide = data.findIndex((row) => row.length > maxCols);
  if (wide >= 0 || data.length > maxRows)
    throw new CsvError(
      wide >= 0
        ? `row ${wide + 1} has ${data[wide]?.length} cells, more than a sheet has columns: is another sign meant to part them?`
        : tooManyRows,
    );
  for (const [row, cells] of data.entries()) {
    const long = cells.findIndex((cell) => cell.length > longestText);
    if (long >= 0)
      throw new CsvError(
        `cell ${cellName(row, long)} has ${cells[long]?.length} characters, more than the ${longestText} that a cell can hold: is it a table, and are its lines parted?`,
      );
  }
  const habits = habitsOf(data, meta.delimiter);
  const workbook = Workbook.create();
  const day = workbook.addStyle({ numberFormat: "yyyy-mm-dd" });
  const specOf = (cell: string): CellSpec => {
    const value = readCell(cell, habits);
    return isDay(cell) && typeof value === "number" ? { value, style: day } : { value };
  };
  workbook.addSheet(sheetName(name), {
    rows: data.map((row) => row.map(specOf)),
    columnWidths: widthsOf(data),
  });
  return workbook;
}

function endsMoreLines(text: string, most: number): boolean {
  let at = -1;
  for (let lines = 0; lines < most; lines++) {
    at = text.indexOf("\n", at + 1);
    if (at < 0) return false;
  }
  return true;
}

/** A day needs more room than a column has by default; no text gets all that it might ask for. */
const [usualWidth, widestColumn] = [7, 30];

/** Widths at which the first rows can be read, so that no day is shown as ####. */
function widthsOf(rows: readonly (readonly string[])[]): (number | null)[] {
  const widths: number[] = [];
  for (const row of rows.slice(0, mostLookedAt))
    row.forEach((cell, col) => {
      widths[col] = Math.max(widths[col] ?? 0, cell.trim().length);
    });
  return Array.from(widths, (width = 0) =>
    width < usualWidth ? null : Math.min(width + 2, widestColumn),
  );
}

/** How most of the first rows write decimals; "1,234" may be either, and goes by what parts the cells. */
function habitsOf(rows: readonly (readonly string[])[], delimiter: string): CsvHabits {
  const cells = rows.slice(0, mostLookedAt).flat();
  const [commas, points, either] = decimals.map(
    (form) => cells.filter((cell) => form.test(cell.trim())).length,
  ) as [number, number, number];
  return {
    decimalComma: commas > points || (commas === points && delimiter !== "," && either > 0),
  };
}

function textOf(bytes: Uint8Array): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder("utf-16le").decode(bytes);
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return new TextDecoder("utf-16be").decode(bytes);
  if (bytes.includes(0)) throw new CsvError("holds bytes that are no text");
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
}

/** A sheet may not be named with some signs, nor longer than 31 letters. */
function sheetName(file: string): string {
  const stem = file.replace(/\.[^.]*$/, "").replace(/[\\/?*[\]:]/g, " ");
  return (
    stem
      .trim()
      .replace(/^'+|'+$/g, "")
      .slice(0, 31) || "Sheet1"
  );
}
