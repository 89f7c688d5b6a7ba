import { cellName } from "../../cells";
import {
  type FitChoice,
  type Grid,
  type Job,
  layouts,
  readHeading,
  type SheetKind,
  type SheetLayout,
  unitOf,
} from "../../job";

/** One heading of a sheet and the field it was taken for. */
export interface FitRow {
  /** Cell of the heading. */
  readonly cell: string;
  readonly heading: string;
  /** Field key, or "" where the heading is not used. */
  readonly field: string;
  /** Unit read from the heading, or the job's own; "" where the field has none. */
  readonly unit: string;
  /** The unit is the job's own, since the heading names none. */
  readonly unitAssumed: boolean;
  /** A person has said so, and the workbook keeps it. */
  readonly chosen: boolean;
}

/** One sheet as fitted. */
export interface FitView {
  readonly sheet: string;
  readonly layout: SheetLayout;
  /** Sheet row of the headings, from 0. */
  readonly headerRow: number;
  readonly rows: readonly FitRow[];
  /** Titles of the fields that no heading stands for. */
  readonly absent: readonly string[];
  /** Titles of needed fields among them: without these the sheet is not read. */
  readonly needed: readonly string[];
}

/** The sheets that were taken for sheets of a job. */
export function fittedSheets(job: Job): FitView[] {
  return layouts.flatMap((layout) =>
    (job.fit.sheets[layout.kind] ?? []).flatMap((fit) => {
      const grid = job.file.sheets.find((sheet) => sheet.name === fit.sheet);
      if (!grid) return [];
      const fields = new Map([...fit.columns].map(([key, column]) => [column.col, key]));
      return [view(job, grid, layout, fit.headerRow, (col) => fields.get(col) ?? "")];
    }),
  );
}

/** A sheet that was not taken, as a sheet of `kind`, with what its user has chosen so far. */
export function unfittedSheet(job: Job, name: string, kind: SheetKind): FitView | undefined {
  const grid = job.file.sheets.find((sheet) => sheet.name === name);
  const layout = layouts.find((entry) => entry.kind === kind);
  if (!grid || !layout) return undefined;
  const row = headingRow(grid);
  return view(job, grid, layout, row, (col) => {
    const heading = String(grid.value(row, col) ?? "");
    return choiceFor(job, name, heading)?.field ?? "";
  });
}

/** Sheets that were not taken for any of the job's, and have something on them. */
export function otherSheets(job: Job): string[] {
  const taken = Object.values(job.fit.sheets)
    .flat()
    .map((fit) => fit.sheet);
  const own = new Set(["job", "fit", "findings"]);
  return job.file.sheets
    .filter((sheet) => !taken.includes(sheet.name) && !own.has(sheet.name.toLowerCase()))
    .filter((sheet) => sheet.rowCount > 0 && sheet.colCount > 0)
    .map((sheet) => sheet.name);
}

/** Kinds of sheet that the workbook was found to lack. */
export function absentKinds(job: Job): SheetLayout[] {
  return layouts.filter((layout) => !job.fit.sheets[layout.kind]);
}

/**
 * The choices with one more: `heading` of `sheet` stands for `field`, or for nothing (""). One
 * field has one heading, so a heading that was given the field before stands for nothing now.
 */
export function withChoice(
  choices: readonly FitChoice[],
  sheet: string,
  heading: string,
  field: string,
): FitChoice[] {
  const others = choices
    .filter((choice) => !sameText(choice.sheet, sheet) || !sameText(choice.heading, heading))
    .map((choice) =>
      sameText(choice.sheet, sheet) && choice.field === field ? { ...choice, field: "" } : choice,
    );
  return [...others, { sheet, heading, field }];
}

function view(
  job: Job,
  grid: Grid,
  layout: SheetLayout,
  headerRow: number,
  fieldAt: (col: number) => string,
): FitView {
  const rows: FitRow[] = [];
  for (let col = 0; col < grid.colCount; col++) {
    const value = grid.value(headerRow, col);
    if (typeof value !== "string" || value.trim() === "") continue;
    const heading = readHeading(value);
    const field = layout.fields.find((entry) => entry.key === fieldAt(col));
    const own = field?.measure ? unitOf(field.measure, job.settings.system) : "";
    rows.push({
      cell: cellName(headerRow, col),
      heading: heading.text,
      field: field?.key ?? "",
      unit: heading.unit?.name ?? own,
      unitAssumed: !heading.unit && own !== "",
      chosen: choiceFor(job, grid.name, heading.text) !== undefined,
    });
  }
  const absent = layout.fields.filter((field) => !rows.some((row) => row.field === field.key));
  return {
    sheet: grid.name,
    layout,
    headerRow,
    rows,
    absent: absent.map((field) => field.title),
    needed: absent.filter((field) => field.needed).map((field) => field.title),
  };
}

function choiceFor(job: Job, sheet: string, heading: string): FitChoice | undefined {
  const text = readHeading(heading).text;
  return job.fit.choices.find(
    (choice) => sameText(choice.sheet, sheet) && sameText(choice.heading, text),
  );
}

/** The row with the most texts among the first twenty: titles above it hold one or two. */
function headingRow(grid: Grid): number {
  let best = 0;
  let most = 0;
  for (let row = 0; row < Math.min(20, grid.rowCount); row++) {
    let texts = 0;
    for (let col = 0; col < grid.colCount; col++) {
      const value = grid.value(row, col);
      if (typeof value === "string" && value.trim() !== "" && value.length <= 80) texts++;
    }
    if (texts > most) [best, most] = [row, texts];
  }
  return best;
}

function sameText(a: string, b: string): boolean {
  return a.trim().toLowerCase() === b.trim().toLowerCase();
}
