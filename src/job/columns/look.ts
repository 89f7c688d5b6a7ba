import { columnLetters, linesOf } from "../../cells";
import type { System } from "../../editions";
import { type Field, money, type SheetLayout } from "./field";
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

/** Widths of columns whose texts are not known beforehand, or may be cut, in characters. */
const widths: Readonly<Record<string, number>> = {
  dwelling: 10,
  tag: 6,
  note: 18,
  how: 20,
  next: 26,
  room: 12,
  model: 12,
  fanCost: 10,
  ductCost: 10,
  roomKind: 12,
  fanKind: 16,
  verdict: 14,
  tester: 8,
};

/** Characters that a field's values take. */
function heldWidth({ holds, format, choices = [], says = [] }: Field): number {
  if (holds === "date") return 11;
  if (format === money.format) return 12;
  const words = [...choices, ...says].map(({ length }) => length);
  return Math.max(format === "0" ? 6 : holds === "number" ? 8 : 7, ...words);
}

/** Letters that are wider than a digit. */
const wideLetters = /[mw]/gi;

/** Width of a field's column in a new job, in characters: its values, and its heading broken at words. */
export function widthOf(field: Field): number {
  const words = field.title.split(" ").map((word) => {
    return word.length + 1 + (word.match(wideLetters)?.length ?? 0) / 2;
  });
  return widths[field.key] ?? Math.max(heldWidth(field), ...words);
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

const margins = { left: 0.25, right: 0.25, top: 0.35, bottom: 0.5, header: 0.25, footer: 0.25 };
const inch = 72;
const papers = { letter: [8.5, 11], a4: [8.27, 11.69] } as const;
/** Letters of 11 points are not shrunk below 7. */
const smallest = 7 / 11;

/** What is printed alike on every sheet of a job. */
const printedOn = (system: System) =>
  ({ paper: paperOf(system), margins, footer: { left: "&A", right: "&P/&N" } }) as const;

/** Widths of the settings, their values and what they mean, in characters: upright, hardly shrunk. */
export const settingsWidths = [29, 18, 54] as const;

/** Points of the row of a setting, of which the meaning is wrapped. */
export const settingHeight = (help: string) => lineHeight * linesOf(help, settingsWidths[2] + 6);

/** How the sheet of the settings is printed. */
export const settingsPage = (system: System) =>
  ({
    ...printedOn(system),
    landscape: false,
    pagesWide: 1,
    pagesTall: 1,
    titleRows: [0, 0],
  }) as const;

/**
 * How the sheet of a layout with so many rows is printed: upright or across, on one page or several
 * side by side, whichever takes the fewest pages with letters of 7 points at least. The heading and
 * what names a row are on each; columns that stand aside are on none.
 */
export function pageOf(layout: SheetLayout, system: System, rows: number) {
  const naming = namingColumns(layout);
  const count = layout.fields.findLastIndex(({ isAside }) => !isAside) + 1;
  const widths = layout.fields.slice(0, count).map((field) => pointsOf(widthOf(field)));
  const heading = headingHeight(layout, system);
  const [short, long] = papers[paperOf(system)];
  const ways = [true, false].flatMap((landscape) => {
    const [across, down] = landscape ? [long, short] : [short, long];
    const width = inch * (across - margins.left - margins.right);
    const height = inch * (down - margins.top - margins.bottom);
    return widths.flatMap((_, i) => {
      const pagesWide = i + 1;
      const scale = Math.min(1, width / widestStrip(widths, naming, pagesWide));
      const fitting = Math.floor((height / scale - heading) / lineHeight);
      const pages = pagesWide * Math.ceil(rows / fitting);
      return scale < smallest ? [] : [{ landscape, pagesWide, pages, scale }];
    });
  });
  const best = ways.reduce((a, b) =>
    b.pages < a.pages || (b.pages === a.pages && b.scale > a.scale) ? b : a,
  );
  return {
    ...printedOn(system),
    landscape: best.landscape,
    pagesWide: best.pagesWide,
    titleRows: [0, firstRow - 1],
    titleCols: [0, naming - 1],
    ...(count < layout.fields.length ? { area: `A:${columnLetters(count - 1)}` } : {}),
  } as const;
}

/** Points of the widest of so many strips of columns, each with those that name a row. */
function widestStrip(widths: readonly number[], naming: number, strips: number): number {
  const named = sum(widths.slice(0, naming));
  const others = widths.slice(naming);
  let widest = Math.max(named + Math.max(0, ...others), named + sum(others) / strips);
  // The program breaks pages where the next column does not fit: widened until that takes no more strips.
  while (stripsOf(others, widest - named) > strips) widest += 5;
  return widest;
}

function stripsOf(widths: readonly number[], room: number): number {
  let strips = 1;
  let taken = 0;
  for (const points of widths) {
    if (taken + points > room) {
      strips++;
      taken = 0;
    }
    taken += points;
  }
  return strips;
}

const sum = (numbers: readonly number[]) => numbers.reduce((all, each) => all + each, 0);
