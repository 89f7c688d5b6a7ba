import { type CellValue, isBlankCell, isCellError } from "../../cells";
import { type Accepted, type FindingKind, findingKinds } from "../findings";
import { plainName } from "../fit";
import type { Grid, JobFile } from "../grid";

/** Name of the sheet in which acceptances are kept. */
export const acceptedSheetTitle = "Accepted";

/** Its columns, in the order in which they are written; they are read in any order. */
export const acceptanceHeadings = [
  "Sheet",
  "Cell",
  "Kind",
  "About",
  "Reason",
  "Initials",
  "Date",
  "Fingerprint",
] as const;

/** One row of the Accepted sheet. */
export interface Acceptance extends Accepted {
  readonly sheet: string;
  readonly cell: string;
  /** undefined where the row names no kind of finding. */
  readonly kind: FindingKind | undefined;
  readonly about: string;
  readonly fingerprint: string;
  /** Where it stands: the sheet and its row from 0. */
  readonly place: { readonly sheet: string; readonly row: number };
}

/** Title rows may stand above the headings, but not more than this many. */
const searchedRows = 20;

/** The acceptances kept in a workbook. */
export function readAcceptances(file: JobFile): Acceptance[] {
  const grid = file.sheets.find(({ name }) => plainName(name) === plainName(acceptedSheetTitle));
  if (!grid) return [];
  for (let row = 0; row < Math.min(searchedRows, grid.rowCount); row++) {
    const columns = columnsOf(grid, row);
    if (["Sheet", "Cell", "Kind"].every((heading) => columns.has(heading)))
      return readRows(grid, row, columns);
  }
  return [];
}

function columnsOf(grid: Grid, row: number): ReadonlyMap<string, number> {
  const columns = new Map<string, number>();
  for (let col = 0; col < grid.colCount; col++) {
    const value = grid.value(row, col);
    const name = typeof value === "string" ? plainName(value) : "";
    const heading = acceptanceHeadings.find((entry) => plainName(entry) === name);
    if (heading && !columns.has(heading)) columns.set(heading, col);
  }
  return columns;
}

function readRows(grid: Grid, headerRow: number, columns: ReadonlyMap<string, number>) {
  const rows: Acceptance[] = [];
  for (let row = headerRow + 1; row < grid.rowCount; row++) {
    const value = (heading: string): CellValue => {
      const col = columns.get(heading);
      return col === undefined ? null : grid.value(row, col);
    };
    const text = (heading: string) => {
      const cell = value(heading);
      return isBlankCell(cell) || isCellError(cell) ? "" : String(cell).trim();
    };
    if (text("Sheet") === "" && text("Cell") === "" && text("Kind") === "") continue;
    const date = value("Date");
    rows.push({
      sheet: text("Sheet"),
      cell: text("Cell").replaceAll("$", "").toUpperCase(),
      kind: kindOf(text("Kind")),
      about: text("About"),
      reason: text("Reason"),
      initials: text("Initials"),
      date: typeof date === "number" ? date : text("Date") || null,
      fingerprint: text("Fingerprint").toLowerCase(),
      place: { sheet: grid.name, row },
    });
  }
  return rows;
}

/** A kind by its name or its title. */
function kindOf(text: string): FindingKind | undefined {
  const name = plainName(text);
  return (Object.keys(findingKinds) as FindingKind[]).find(
    (kind) => plainName(kind) === name || plainName(findingKinds[kind].title) === name,
  );
}
