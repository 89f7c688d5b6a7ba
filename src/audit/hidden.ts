import { cellName, runsOf } from "../cells";
import { jobTitle, listed, type SheetFit } from "../job";
import type { Audit } from "./audit";
import { held, type SheetScan } from "./sheet-scan";

/** A hidden sheet of the job, and any with numbers that no menu brings to view. */
export function auditHiddenSheet(audit: Audit, { grid, columns }: SheetScan): void {
  const { name, hiddenSheet } = grid;
  const [first] = columns.filter(({ numbers }) => numbers > 0);
  if (!hiddenSheet || !first || (hiddenSheet === "hidden" && !audit.places.fitOf(name))) return;
  const numbers = columns.reduce((sum, column) => sum + column.numbers, 0);
  const row = first.codes.indexOf(held.number);
  audit.add("sheet-hidden", name, row, first.col, {
    what:
      hiddenSheet === "hidden"
        ? `the sheet ${name} is hidden and holds ${numbers} numbers`
        : `the sheet ${name}, with ${numbers} numbers, is hidden so that no menu shows it`,
    effect: "A reader does not see it, and what draws on it cannot be followed.",
    mend: "Show the sheet, or say in the job's notes what it is for.",
  });
}

/** Hidden rows and columns in which the job's data stands: one finding a sheet for each. */
export function auditHidden(audit: Audit, scan: SheetScan): void {
  const { name } = scan.grid;
  const rows = hiddenRows(audit, scan);
  const [first] = rows;
  if (first !== undefined) {
    const numbers = runsInWords(rows.map((row) => row + 1));
    const filled = scan.columns.find(({ codes }) => codes[first] !== held.blank)?.col ?? 0;
    const colOf = (row: number) => audit.places.verdictCol(name, row) ?? filled;
    audit.add("row-hidden", name, first, colOf(first), {
      also: rows.slice(1).map((row) => cellName(row, colOf(row))),
      what: rows.length === 1 ? `row ${numbers} is hidden` : `rows ${numbers} are hidden`,
      effect: "A reader does not see what is counted with the rest.",
      mend: "Show the rows, or move what does not count to another sheet.",
    });
  }
  const fit = audit.places.fitOf(name);
  if (!fit) return;
  const columns = hiddenColumns(scan, fit);
  const headings = listed(columns.map(({ heading }) => `"${heading}"`));
  if (columns[0])
    audit.add("column-hidden", name, fit.headerRow, columns[0].col, {
      what: columns.length === 1 ? `column ${headings} is hidden` : `${headings} are hidden`,
      effect: "A reader does not see what the results rest on.",
      mend: "Show the columns.",
    });
}

/** A cell so far from the rest that what lies between and beyond was not looked at. */
export function auditFar(
  audit: Audit,
  { grid: { name, beyond, rowCount, colCount } }: SheetScan,
): void {
  if (!beyond) return;
  audit.add("cell-far", name, beyond.row, beyond.col, {
    what: `the cell stands far from all others, which end at ${cellName(rowCount - 1, colCount - 1)}`,
    effect: "Nothing beyond that cell was checked.",
    mend: "Clear it if it was typed by accident, or move it to the others.",
  });
}

/** On a sheet of the job its data, its settings; elsewhere rows that compute something. */
function hiddenRows(audit: Audit, { grid, columns, stretch, filled }: SheetScan): number[] {
  const { hiddenRow } = grid;
  if (!hiddenRow) return [];
  const fit = audit.places.fitOf(grid.name);
  const isSettings = grid.name.toLowerCase() === jobTitle.toLowerCase();
  const rows: number[] = [];
  for (let row = fit ? fit.headerRow + 1 : 0; row < grid.rowCount; row++) {
    if (filled[row] === 0 || !hiddenRow(row)) continue;
    const counts = fit
      ? stretch[row] !== 0
      : isSettings ||
        audit.places.readingsOf(grid.name, row).length > 0 ||
        columns.some(({ codes }) => (codes[row] as number) >= 0);
    if (counts) rows.push(row);
  }
  return rows;
}

function hiddenColumns({ grid, columns }: SheetScan, { columns: fitted, headerRow }: SheetFit) {
  const isFilled = (col: number) =>
    columns
      .find((column) => column.col === col)
      ?.codes.some((code, row) => row > headerRow && code !== held.blank);
  return [...fitted.values()]
    .filter(({ col }) => grid.hiddenCol?.(col) && isFilled(col))
    .sort((a, b) => a.col - b.col);
}

const mostRuns = 6;

/** "5 to 9, 14 and 20" */
function runsInWords(numbers: readonly number[]): string {
  const runs = runsOf(numbers);
  const words = runs.slice(0, mostRuns).map(([a, b]) => (a === b ? `${a}` : `${a} to ${b}`));
  return runs.length > mostRuns ? `${words.join(", ")} …` : listed(words);
}
