import { linesOf } from "../../cells";
import type { System } from "../../editions";
import type { Field, SheetLayout } from "./field";
import { firstRow } from "./formulas";
import { layouts } from "./layouts";
import { type Measure, unitOf } from "./units";

/** The heading of a field in a new job. */
export function headingOf(field: Field, system: System): string {
  return field.measure ? `${field.title} (${unitOf(field.measure, system)})` : field.title;
}

/** How the cells under a heading of a job's sheet are typed; undefined for any other. */
export function entryUnder(sheet: string, heading: unknown): Field["entry"] {
  const layout = layouts.find(({ title }) => title === sheet);
  const wanted = String(heading).replace(/ \([^)]*\)$/, "");
  const field = layout?.fields.find(({ title }) => title === wanted);
  // What alone names a row is never that of another.
  return field?.key === layout?.names.join() ? undefined : field?.entry;
}

/** The number format of a field's cells in a new job; undefined leaves the usual one. */
export function numberFormatOf({ holds, measure, format }: Field): string | undefined {
  if (holds === "date") return "yyyy-mm-dd";
  const code = format ?? (measure && (formats[measure] ?? "0.0"));
  return code && `${code}${apart}`;
}

const formats: Partial<Record<Measure, string>> = {
  opening: "0.00",
  length: "0.00",
  floor: "0",
  volume: "0",
};
/** A little room after a number, so that it does not touch the text of the next column. */
const apart = "_)";

/** Widths of columns that do not follow their heading, in characters. */
const widths: Readonly<Record<string, number>> = {
  note: 32,
  how: 24,
  next: 26,
  room: 16,
  first: 17,
  roomKind: 15,
  duty: 13,
  fanKind: 16,
  status: 12,
  verdict: 14,
  date: 12,
  checked: 12,
};

/** Width of a field's column in a new job, in characters. */
export function widthOf({ key, title }: Field): number {
  return widths[key] ?? Math.max(9, Math.min(14, title.length + 2));
}

const lineHeight = 15;

/** Points of the row of headings, in bold and wrapped at their words. */
export function headingHeight({ fields }: SheetLayout, system: System): number {
  const lines = fields.map((field) => linesOf(headingOf(field, system), widthOf(field) - 1));
  return lineHeight * Math.max(...lines);
}

/** The columns that name a row: they stay in view, and stand on every printed page. */
export function namingColumns({ fields, names }: SheetLayout): number {
  return fields.findLastIndex(({ key }) => names.includes(key)) + 1;
}

/** A paper that people of a system of units have. */
export function paperOf(system: System): "letter" | "a4" {
  return system === "ip" ? "letter" : "a4";
}

/** Points of a column of so many characters, in the usual font of 11 points. */
export const pointsOf = (characters: number) => Math.round(5.25 * characters + 3.75);

const margins = { left: 0.4, right: 0.4, top: 0.45, bottom: 0.6, header: 0.3, footer: 0.3 };
/** Points between the margins, of the narrower of the two papers upright and across. */
const [upright, across] = [535, 730];
/** Letters of 11 points are not shrunk below 8; a program without the font still shows some 7. */
const smallest = 8 / 11;

/** What is printed alike on every sheet of a job. */
const printedOn = (system: System) =>
  ({ paper: paperOf(system), margins, footer: { left: "&A", right: "&P/&N" } }) as const;

/** Widths of the settings, their values and what they mean, in characters: upright, hardly shrunk. */
export const settingsWidths = [29, 18, 54] as const;

/** Points of the row of a setting, of which the meaning is wrapped. */
export const settingHeight = (help: string) => lineHeight * linesOf(help, settingsWidths[2] + 6);

/** How the sheet of the settings is printed. */
export const settingsPage = (system: System) =>
  ({ ...printedOn(system), landscape: false, pagesWide: 1, titleRows: [0, 0] }) as const;

/**
 * How the sheet of a layout is printed: upright where that shrinks nothing; otherwise across, on as
 * many pages side by side as letters of 8 points need. The heading and what names a row are on each.
 */
export function pageOf(layout: SheetLayout, system: System) {
  const naming = namingColumns(layout);
  const widths = layout.fields.map((field) => pointsOf(widthOf(field)));
  const width = (columns: readonly number[]) => columns.reduce((sum, each) => sum + each, 0);
  const named = width(widths.slice(0, naming));
  let pagesWide = 1;
  let taken = named;
  for (const points of widths.slice(naming)) {
    if (taken + points > across / smallest) {
      pagesWide++;
      taken = named;
    }
    taken += points;
  }
  return {
    ...printedOn(system),
    landscape: width(widths) > upright,
    pagesWide,
    titleRows: [0, firstRow - 1],
    titleCols: [0, naming - 1],
  } as const;
}
