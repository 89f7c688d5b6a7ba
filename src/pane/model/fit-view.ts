import { cellName } from "../../cells";
import {
  type FitChoice,
  type Grid,
  type Job,
  layouts,
  readHeading,
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
  };
}

function choiceFor(job: Job, sheet: string, heading: string): FitChoice | undefined {
  const text = readHeading(heading).text;
  return job.fit.choices.find(
    (choice) => sameText(choice.sheet, sheet) && sameText(choice.heading, text),
  );
}

function sameText(a: string, b: string): boolean {
  return a.trim().toLowerCase() === b.trim().toLowerCase();
}

/** The fields that a heading may stand for: a unit in it rules out those that measure otherwise. */
export function fieldsFor(layout: SheetLayout, heading: string): SheetLayout["fields"] {
  const named = readHeading(heading).unit?.dimension;
  if (!named) return layout.fields;
  return layout.fields.filter(
    ({ measure }) =>
      measure === undefined ||
      readHeading(`x (${unitOf(measure, "ip")})`).unit?.dimension === named,
  );
}
