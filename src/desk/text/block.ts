import Papa from "papaparse";

/**
 * A block of cells from text on the clipboard: tab-separated as spreadsheets copy it, else
 * comma-separated where that gives a block, else the text as it stands.
 */
export function readBlock(text: string): string[][] {
  const trimmed = text.replace(/\r?\n$/, "");
  if (trimmed.includes("\t")) return parse(trimmed, "\t");
  const rows = parse(trimmed, ",");
  const width = rows[0]?.length ?? 0;
  // Prose with a comma in it is one entry; a list has the same number of fields in every line.
  const isTable = rows.length > 1 && width > 1 && rows.every((row) => row.length === width);
  return isTable ? rows : trimmed.split(/\r?\n/).map((line) => [unquoted(line)]);
}

function parse(text: string, delimiter: string): string[][] {
  return Papa.parse<string[]>(text, { delimiter, skipEmptyLines: false }).data;
}

function unquoted(line: string): string {
  return parse(line, "\t")[0]?.[0] ?? "";
}

/** A block of cells as tab-separated text, with quotes where a cell holds a tab or a line break. */
export function writeBlock(rows: readonly (readonly string[])[]): string {
  return Papa.unparse(rows as string[][], { delimiter: "\t", newline: "\r\n" });
}
