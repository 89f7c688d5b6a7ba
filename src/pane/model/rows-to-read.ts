import type { CellValue } from "../../cells";
import { acceptedSheetTitle, type Grid, type Job, type JobFile, plainName } from "../../job";
import type { Edit } from "../session/host";

/** Formulas of so many rows tell which sheets a sheet looks at. */
const sampledRows = 50;

/**
 * What to read again after edits: the edited rows, and all rows of the sheets whose formulas look
 * at an edited sheet. "all" where a heading, a setting or a sheet that was not read has changed;
 * "none" where nothing that is checked has.
 */
export function rowsToRead(job: Job, edits: readonly Edit[]): readonly Edit[] | "all" | "none" {
  const fits = Object.values(job.fit.sheets).flat();
  const rows = new Map<string, Edit>();
  for (const edit of edits) {
    const fit = fits.find((entry) => entry.sheet === edit.sheet);
    if (!fit) {
      if (edit.sheet.toLowerCase() === "findings") continue;
      // No formula looks at acceptances, so that their own rows are enough.
      if (plainName(edit.sheet) !== plainName(acceptedSheetTitle)) return "all";
    } else if (edit.firstRow <= fit.headerRow) return "all";
    const before = rows.get(edit.sheet);
    rows.set(edit.sheet, {
      sheet: edit.sheet,
      firstRow: Math.min(edit.firstRow, before?.firstRow ?? edit.firstRow),
      lastRow: Math.max(edit.lastRow, before?.lastRow ?? edit.lastRow),
    });
  }
  if (rows.size === 0) return "none";
  for (const name of lookingAt(job.file, [...rows.keys()])) {
    const grid = job.file.sheets.find((sheet) => sheet.name === name);
    if (grid) rows.set(name, { sheet: name, firstRow: 0, lastRow: grid.rowCount - 1 });
  }
  return [...rows.values()];
}

/** Whether a formula among these rows has not been answered yet. */
export function isWaiting(file: JobFile, rows: readonly Edit[]): boolean {
  return rows.some(({ sheet, firstRow, lastRow }) => {
    const grid = file.sheets.find((entry) => entry.name === sheet);
    if (!grid) return false;
    for (let row = firstRow; row <= Math.min(lastRow, grid.rowCount - 1); row++)
      for (let col = 0; col < grid.colCount; col++)
        if (isUnanswered(grid.value(row, col))) return true;
    return false;
  });
}

function isUnanswered(value: CellValue): boolean {
  if (typeof value !== "object" || value === null) return false;
  return value.error === "#BUSY!" || value.error === "#GETTING_DATA";
}

/** The sheets whose formulas look at one of these, and those that look at them in turn. */
function lookingAt(file: JobFile, edited: readonly string[]): string[] {
  const found = new Set(edited);
  const texts = new Map(file.sheets.map((grid) => [grid.name, formulasOf(grid)]));
  for (let before = 0; before !== found.size; ) {
    before = found.size;
    for (const [name, formulas] of texts)
      if (!found.has(name) && [...found].some((other) => mentions(formulas, other)))
        found.add(name);
  }
  return [...found].filter((name) => !edited.includes(name));
}

function mentions(formulas: string, sheet: string): boolean {
  const name = sheet.toLowerCase();
  return formulas.includes(`${name}!`) || formulas.includes(`${name.replaceAll("'", "''")}'!`);
}

function formulasOf(grid: Grid): string {
  const texts: string[] = [];
  for (let row = 0; row < Math.min(sampledRows, grid.rowCount); row++)
    for (let col = 0; col < grid.colCount; col++) {
      const formula = grid.formula(row, col);
      if (formula !== null) texts.push(formula.toLowerCase());
    }
  return texts.join("\n");
}
