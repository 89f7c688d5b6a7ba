import Papa from "papaparse";

/** A table as a text file. What a spreadsheet would take for a formula is made harmless. */
export function csvOf(rows: readonly (readonly (string | number | null)[])[]): string {
  const text = Papa.unparse(rows as (string | number | null)[][], {
    escapeFormulae: true,
    newline: "\r\n",
  });
  return `${text}\r\n`;
}
