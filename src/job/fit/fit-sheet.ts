import { type CellValue, isBlankCell, once, onceForText } from "../../cells";
import type { Field, Measure, SheetKind, SheetLayout } from "../columns";
import type { FitChoice, Grid } from "../grid";
import { type Heading, plainName, readHeading } from "./heading";

/** A field found in a column of a sheet. */
export interface FittedColumn {
  readonly col: number;
  readonly heading: string;
  /** Unit written in the heading; undefined means the job's own. */
  readonly unit: string | undefined;
}

/** Which heading of a sheet was taken for which field. */
export interface SheetFit {
  readonly kind: SheetKind;
  readonly sheet: string;
  readonly headerRow: number;
  readonly columns: ReadonlyMap<string, FittedColumn>;
  /** Headings that stand for no field of ours. They are left alone. */
  readonly unused: readonly string[];
  /** Sum of how well the headings matched. */
  readonly score: number;
}

/** Title rows, logos and notes may stand above the headings, but not more than this many. */
export const searchedRows = 20;

/** Fits one sheet to one layout; undefined where a needed field is not found. */
export function fitSheet(
  grid: Grid,
  layout: SheetLayout,
  choices: readonly FitChoice[] = [],
): SheetFit | undefined {
  const own = choices.filter((choice) => choice.sheet.toLowerCase() === grid.name.toLowerCase());
  const read = own.length === 0 ? usualReader(layout) : headingReader(layout, own);
  let best: SheetFit | undefined;
  for (let row = 0; row < Math.min(searchedRows, grid.rowCount); row++) {
    const fit = fitRow(grid, row, layout, read);
    if (fit.score > (best?.score ?? 0)) best = fit;
  }
  const needed = layout.fields.filter((field) => field.needed);
  return best && needed.every((field) => best.columns.has(field.key)) ? best : undefined;
}

/** A heading, and the fields of a layout that it names more or less well. */
interface Named {
  readonly heading: Heading;
  readonly fields: readonly { readonly field: Field; readonly score: number }[];
}

/** Reads headings, each once: the rows searched are mostly data, which repeat their words. */
function headingReader(
  layout: SheetLayout,
  choices: readonly FitChoice[],
): (text: string) => Named {
  return onceForText(mostHeadings, (text) => {
    const heading = readHeading(text);
    const fields = layout.fields
      .map((field) => ({ field, score: match(heading, field, choices) }))
      .filter(({ score }) => score > 0);
    return { heading, fields };
  });
}

const mostHeadings = 10_000;
const usualReader = once((layout: SheetLayout) => headingReader(layout, []));

function fitRow(
  grid: Grid,
  row: number,
  layout: SheetLayout,
  read: (text: string) => Named,
): SheetFit {
  const headings: (Named & { col: number })[] = [];
  for (let col = 0; col < grid.colCount; col++) {
    const value = grid.value(row, col);
    if (isHeading(value)) headings.push({ col, ...read(value) });
  }
  const pairs = headings.flatMap(({ col, heading, fields }) =>
    fields.map(({ field, score }) => ({ col, heading, field, score })),
  );
  pairs.sort((a, b) => b.score - a.score || a.col - b.col);
  const columns = new Map<string, FittedColumn>();
  const taken = new Set<number>();
  let score = 0;
  for (const pair of pairs) {
    if (taken.has(pair.col) || columns.has(pair.field.key)) continue;
    taken.add(pair.col);
    score += pair.score;
    columns.set(pair.field.key, {
      col: pair.col,
      heading: pair.heading.text,
      unit: pair.heading.unit?.name,
    });
  }
  const unused = headings.filter(({ col }) => !taken.has(col)).map(({ heading }) => heading.text);
  return { kind: layout.kind, sheet: grid.name, headerRow: row, columns, unused, score };
}

function isHeading(value: CellValue): value is string {
  return typeof value === "string" && !isBlankCell(value) && value.length <= 80;
}

const dimensions: Record<Measure, string> = {
  pressure: "pressure",
  flow: "flow",
  opening: "area",
  length: "length",
  distance: "length",
  floor: "area",
  volume: "volume",
  temperature: "temperature",
};

/** A field's title and words as headings are compared: made once, for every heading meets every field. */
const plainNames = once(({ title, words }: Field) => [title, ...words].map(plainName));

/** How well a heading names a field: 0 not at all, 1000 by the user's own choice. */
function match(heading: Heading, field: Field, choices: readonly FitChoice[]): number {
  const chosen = choices.find(
    (choice) => choice.heading.trim().toLowerCase() === heading.text.toLowerCase(),
  );
  if (chosen) return chosen.field === field.key ? 1000 : 0;
  const dimension = field.measure && dimensions[field.measure];
  if (heading.unit && heading.unit.dimension !== dimension) return 0;
  const place = plainNames(field).indexOf(heading.name);
  if (place === 0) return 100;
  if (heading.name !== "" && place > 0) return 90;
  // "Pa" or "cfm" alone names the one thing that a tester would write under it.
  if (heading.name === "" && heading.unit)
    return field.key === "pressure" || field.key === "flow" ? 50 : 0;
  const phrase = plainNames(field)
    .filter((word) => word.length > 2 && ` ${heading.name} `.includes(` ${word} `))
    .sort((a, b) => b.length - a.length)[0];
  return phrase ? 20 + (40 * phrase.length) / heading.name.length : 0;
}
