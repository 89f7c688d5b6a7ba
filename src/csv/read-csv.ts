import Papa from "papaparse";
import { cellName, InputError, longestText, maxCols, sheetNameOf } from "../cells";
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
/** Far above any real job; a line is that of the file, and may hold a part of a row. */
const most = { characters: 32_000_000, line: 1_000_000, rows: 200_000, cells: 2_000_000 };
/** The start of the file shows which sign parts the cells. */
const shownBy = 2 ** 16;

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
  const workbook = Workbook.create();
  const day = workbook.addStyle({ numberFormat: "yyyy-mm-dd" });
  const { first, rows, parting } = rowsOf(table, delimiter);
  const habits = habitsOf(first, parting);
  const specOf = (cell: string): CellSpec => {
    const value = readCell(cell, habits);
    return isDay(cell) && typeof value === "number" ? { value, style: day } : { value };
  };
  workbook.addSheet(sheetNameOf(name.replace(/\.[^.]*$/, ""), "Sheet1"), {
    rows: rows.map((row) => row.map(specOf)),
    columnWidths: widthsOf(first),
  });
  return workbook;
}

/** The rows up to the last that holds something, refused as soon as one is beyond what is read. */
function rowsOf(table: string, delimiter: string | undefined) {
  refuseLong(table);
  const guess = Papa.parse<string[]>(table.slice(0, shownBy), {
    preview: 10,
    ...(delimiter === undefined ? {} : { delimiter }),
  }).meta;
  const rows: string[][] = [];
  let cells = 0;
  let filled = 0;
  Papa.parse<string[]>(table, {
    delimiter: guess.delimiter,
    newline: guess.linebreak as "\n",
    step({ data, errors }) {
      if (errors.some(({ type }) => type === "Quotes"))
        throw new CsvError(
          `row ${rows.length + 1} opens a quotation mark that is never closed: mend it in a text editor`,
        );
      refuseRow(data, rows.length);
      rows.push(data);
      cells += data.length;
      if (data.some((cell) => cell.trim() !== "")) filled = rows.length;
      if (rows.length > most.rows) throw tooMuch("rows", most.rows);
      if (cells > most.cells) throw tooMuch("cells", most.cells);
    },
  });
  rows.length = filled;
  if (filled === 0) throw new CsvError("holds no rows");
  return { rows, first: rows.slice(0, mostLookedAt), parting: guess.delimiter };
}

function tooMuch(what: string, limit: number): CsvError {
  return new CsvError(
    `has more than ${limit.toLocaleString("en")} ${what}, the most that are read of a text file: part it into several files, dwelling by dwelling`,
  );
}

function refuseLong(text: string): void {
  if (text.length > most.characters) throw tooMuch("characters", most.characters);
  for (let at = 0; at + most.line < text.length; ) {
    // The last line end within reach is where the search goes on.
    const reach = text.slice(at, at + most.line);
    const past = Math.max(reach.lastIndexOf("\n"), reach.lastIndexOf("\r")) + 1;
    if (past === 0)
      throw new CsvError(
        `has a line of more than ${most.line.toLocaleString("en")} characters: is it a table, and are its lines parted?`,
      );
    at += past;
  }
}

function refuseRow(cells: readonly string[], row: number): void {
  if (cells.length > maxCols)
    throw new CsvError(
      `row ${row + 1} has ${cells.length} cells, more than a sheet has columns: is another sign meant to part them?`,
    );
  const long = cells.findIndex((cell) => cell.length > longestText);
  if (long >= 0)
    throw new CsvError(
      `cell ${cellName(row, long)} has ${cells[long]?.length} characters, more than the ${longestText} that a cell can hold: is it a table, and are its lines parted?`,
    );
}

/** A day needs more room than a column has by default; no text gets all that it might ask for. */
const [usualWidth, widestColumn] = [7, 30];

/** Widths at which the first rows can be read, so that no day is shown as ####. */
function widthsOf(rows: readonly (readonly string[])[]): (number | null)[] {
  const widths: number[] = [];
  for (const row of rows)
    row.forEach((cell, col) => {
      widths[col] = Math.max(widths[col] ?? 0, cell.trim().length);
    });
  return Array.from(widths, (width = 0) =>
    width < usualWidth ? null : Math.min(width + 2, widestColumn),
  );
}

/** How most of the first rows write decimals; "1,234" may be either, and goes by what parts the cells. */
function habitsOf(rows: readonly (readonly string[])[], delimiter: string): CsvHabits {
  const cells = rows.flat();
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
