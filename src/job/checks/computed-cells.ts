import {
  type CellValue,
  type Copied,
  isBlankCell,
  isCellError,
  isRoundingOf,
  isSameNumber,
  kept,
  once,
  onceForText,
  rowPattern,
  shown,
  shownApart,
} from "../../cells";
import { type Field, layoutOf, type SheetKind, type Values } from "../columns";
import { expectedIn } from "../facts";
import type { Job, Table } from "../read";
import type { Report } from "../report";
import { listed } from "../words";
import { aboutIn } from "./about";
import type { Check } from "./check";
import { unreachedBy } from "./reach";

/** So many rows with one formula are the way of their column. */
const leastRows = 3;
const leastShare = 0.6;

/** Values that do not follow from their row, and formulas that do not follow what they should. */
export const checkComputedCells: Check = (job, report, { byRow }) => {
  for (const { layout } of Object.values(job.tables))
    for (const field of layout.fields) {
      if (!isCompared(job, layout.kind, field)) continue;
      const { kind } = layout;
      const words = `${kind} ${field.key}`;
      const expectedOf = (own: Job) => expectedIn(own, own.tables[kind] as Table, field);
      const expected = byRow(`${words}, expected`, kind, expectedOf);
      // Whether a word is one of ours is told by the words of the whole column.
      const ours = field.says ?? textsAmong(expected);
      const looks = byRow(`${words}: ${ours.join()}`, kind, (own) =>
        looksOf(own, kind, { field, expected: own === job ? expected : expectedOf(own), ours }),
      );
      tell(job, report, { table: job.tables[kind] as Table, field, expected, looks, ours });
    }
};

const textsAmong = once((values: Values): readonly string[] => [
  ...new Set(values.filter((value) => typeof value === "string")),
]);

function isCompared(job: Job, kind: SheetKind, field: Field): boolean {
  // A firm's verdicts are in its own words, and have a check of their own.
  const isOwnWord = job.firm !== undefined && kind === "fans" && field.key === "verdict";
  return field.is !== undefined && job.tables[kind]?.has(field.key) === true && !isOwnWord;
}

/** What is seen of a cell that can be compared: its formula in relative form. */
interface Look {
  readonly pattern: string;
  readonly differs: boolean;
}

/** A computed field of a table, with what is seen of each row. */
interface Column {
  readonly table: Table;
  readonly field: Field;
  readonly expected: Values;
  /** The texts that are known to be of ours. */
  readonly ours: readonly CellValue[];
  readonly looks: readonly (Look | undefined)[];
}

/** In place of a formula. */
const typed = "";

function looksOf(
  job: Job,
  kind: SheetKind,
  of: Pick<Column, "field" | "expected" | "ours">,
): Column["looks"] {
  const table = job.tables[kind] as Table;
  const { key } = of.field;
  const column = { table, ...of };
  const isOfFirm = job.firm !== undefined && kind === "fans";
  const byCopy = new Map<Copied, Sights>();
  /** The formula in relative form, worked out once for all its copies. */
  const relative = (i: number) => {
    const { grid, row, col } = table.placeOrHome(key, i);
    const copied = grid.copyOf?.(row, col) ?? null;
    const sights = () => sightsOf(rowPattern(grid.formula(row, col) ?? "", row, col));
    return copied ? kept(byCopy, copied, sights) : sights();
  };
  const unwritten = sightsOf(typed);
  return table.raws(key).map((value, i) => {
    if (isBlankCell(value) || isCellError(value)) return undefined;
    if (isOfFirm && !job.fans?.isMeasured(i)) return undefined;
    const sights = table.hasFormula(key, i) ? relative(i) : unwritten;
    return sights[differs(column, i, toldOf(column, i)) ? 1 : 0];
  });
}

type Sights = readonly [sound: Look, differing: Look];

/** The same for all cells of a formula, so that a column whose looks stay is the same after an edit. */
const sightsOf = onceForText(
  10_000,
  (pattern): Sights => [
    { pattern, differs: false },
    { pattern, differs: true },
  ],
);

/** Rows by the formula that they have, and how many rows there are. */
const byFormulaIn = once((looks: Column["looks"]) => {
  const byFormula = new Map<string, { own: number[]; differing: number[] }>();
  let rows = 0;
  for (const [i, look] of looks.entries()) {
    if (!look) continue;
    rows++;
    const alike = kept(byFormula, look.pattern, () => ({ own: [], differing: [] }));
    alike.own.push(i);
    if (look.differs) alike.differing.push(i);
  }
  return { byFormula, rows };
});

function tell(job: Job, report: Report, column: Column): void {
  const { table, field, looks } = column;
  const { key } = field;
  const about = aboutIn(job, table);
  const wanted = (i: number) => toldOf(column, i);
  const { byFormula, rows } = byFormulaIn(looks);
  for (const i of byFormula.get(typed)?.differing ?? [])
    report.at("value-differs", table, key, i, about(i), {
      what: differenceOf(column, i, wanted(i)),
      effect: "The typed value does not follow from the cells beside it.",
      mend: `Type ${text(inSheet(table, key, i, wanted(i)))}, or enter a formula.`,
    });
  for (const [pattern, { own, differing }] of byFormula) {
    if (pattern === typed) continue;
    const isWay = own.length >= leastRows && own.length >= leastShare * rows;
    const unreached = isWay ? unreachedBy(job, table, field, own) : [];
    const [first, ...others] = unreached.length > 0 ? own : differing;
    if (first === undefined) continue;
    const shownRow = differing[0] ?? first;
    const more = others.length > 0 ? `, and ${others.length} more rows have this formula` : "";
    const names = listed(
      unreached.map(({ kind, key }) => job.tables[kind]?.heading(key) ?? layoutOf(kind).title),
    );
    report.at("value-differs", table, key, first, about(first), {
      what:
        differing.length > 0
          ? `${differenceOf(column, shownRow, wanted(shownRow))}${more}`
          : `${table.heading(key)} does not follow ${names}${more}`,
      effect:
        unreached.length > 0
          ? `The formula does not read ${names}: the result stays as it is when that changes.`
          : "The formula does not use the cells of its own row, or uses another constant.",
      mend:
        unreached.length > 0
          ? `Let the formula follow from ${names}, and copy it down.`
          : "Compare the formula with that of the rows above and below.",
      also: others.map((i) => table.cell(key, i)),
    });
  }
}

/** What a cell should hold, in the unit of its own sheet. */
function inSheet(table: Table, key: string, i: number, expected: Expected): Expected {
  return typeof expected === "number" ? expected / table.factor(key, i) : expected;
}

function differenceOf(
  { table, field: { key } }: Pick<Column, "table" | "field">,
  i: number,
  expected: Expected,
): string {
  const held = table.raw(key, i);
  const wanted = inSheet(table, key, i, expected);
  const [is, gives] =
    typeof held === "number" && typeof wanted === "number"
      ? shownApart(held, wanted)
      : [text(held), text(wanted)];
  return `${table.heading(key, i)} is ${is} but the row gives ${gives}`;
}

type Expected = number | string | undefined;

/** What a cell should hold; undefined where that is not known, or where the firm has words of its own. */
function toldOf({ table, field, expected, ours }: Omit<Column, "looks">, i: number): Expected {
  const wanted = expected[i];
  if (typeof wanted === "number") return wanted;
  if (typeof wanted !== "string" || wanted === "") return undefined;
  const stored = table.text(field.key, i);
  const isOurs = ours.includes(field.says ? stored.toLowerCase() : stored);
  return isOurs || /FANROW/i.test(table.formula(field.key, i) ?? "") ? wanted : undefined;
}

/** Whether a stored value is another than the expected one, which may be written rounded. */
function differs(
  { table, field: { key } }: Pick<Column, "table" | "field">,
  i: number,
  wanted: Expected,
): boolean {
  if (wanted === undefined) return false;
  const value = table.raw(key, i);
  if (typeof wanted === "string")
    return typeof value !== "string" || value.trim().toLowerCase() !== wanted.toLowerCase();
  if (typeof value !== "number") return true;
  const given = inSheet(table, key, i, wanted) as number;
  if (isSameNumber(value, given)) return false;
  if (table.hasFormula(key, i) && !/ROUND/i.test(table.formula(key, i) ?? "")) return true;
  return !isRoundingOf(value, given);
}

function text(value: CellValue | undefined): string {
  return typeof value === "number" ? shown(value) : `"${String(value)}"`;
}
