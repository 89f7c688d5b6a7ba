import {
  type CellValue,
  type Copied,
  isBlankCell,
  isCellError,
  isRoundingOf,
  isSameNumber,
  kept,
  rowPattern,
  shown,
  shownApart,
} from "../../cells";
import { type Field, layoutOf } from "../columns";
import { expectedIn } from "../facts";
import type { Job, Table } from "../read";
import type { Report } from "../report";
import { listed } from "../words";
import { aboutIn } from "./cell-types";
import type { Check } from "./check";
import { unreachedBy } from "./reach";

/** So many rows with one formula are the way of their column. */
const leastRows = 3;
const leastShare = 0.6;

/** Values that do not follow from their row, and formulas that do not follow what they should. */
export const checkComputedCells: Check = (job, report) => {
  for (const table of Object.values(job.tables))
    for (const field of table.layout.fields) {
      const isOfFirm = job.firm !== undefined && job.fans?.table === table;
      // A firm's verdicts are in its own words, and have a check of their own.
      if (!field.is || !table.has(field.key) || (isOfFirm && field.key === "verdict")) continue;
      const rows = [...table.raws(field.key).entries()].flatMap(([i, value]) => {
        if (isBlankCell(value) || isCellError(value)) return [];
        return !isOfFirm || job.fans?.isMeasured(i) ? [i] : [];
      });
      checkColumn(job, report, { table, field, rows });
    }
};

/** A computed field of a table, with the rows in which it can be compared. */
interface Column {
  readonly table: Table;
  readonly field: Field;
  readonly rows: readonly number[];
}

function checkColumn(job: Job, report: Report, column: Column): void {
  const { table, field, rows } = column;
  const { key } = field;
  const about = aboutIn(job, table);
  const expected = expectedIn(job, table, field);
  const wanted = (i: number) => toldOf(table, field, i, expected);
  const byFormula = new Map<string, number[]>();
  const patterns = new Map<Copied, string>();
  /** The formula in relative form, worked out once for all its copies. */
  const relative = (i: number): string => {
    const { grid, row, col } = table.placeOrHome(key, i);
    const copied = grid.copyOf?.(row, col) ?? null;
    const pattern = () => rowPattern(grid.formula(row, col) ?? "", row, col);
    return copied ? kept(patterns, copied, pattern) : pattern();
  };
  for (const i of rows) {
    if (table.hasFormula(key, i)) kept(byFormula, relative(i), () => []).push(i);
    else if (differs(column, i, wanted(i)))
      report.at("value-differs", table, key, i, about(i), {
        what: differenceOf(column, i, wanted(i)),
        effect: "The typed value does not follow from the cells beside it.",
        mend: `Type ${text(inSheet(table, key, i, wanted(i)))}, or enter a formula.`,
      });
  }
  for (const own of byFormula.values()) {
    const isWay = own.length >= leastRows && own.length >= leastShare * rows.length;
    const differing = own.filter((i) => differs(column, i, wanted(i)));
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

function differenceOf({ table, field: { key } }: Column, i: number, expected: Expected): string {
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
function toldOf(
  table: Table,
  { key, says }: Field,
  i: number,
  expected: readonly CellValue[],
): Expected {
  const wanted = expected[i];
  if (typeof wanted === "number") return wanted;
  if (typeof wanted !== "string" || wanted === "") return undefined;
  const stored = table.text(key, i).toLowerCase();
  const isOurs = says ? says.includes(stored) : expected.includes(table.text(key, i));
  return isOurs || /FANROW/i.test(table.formula(key, i) ?? "") ? wanted : undefined;
}

/** Whether a stored value is another than the expected one, which may be written rounded. */
function differs({ table, field: { key } }: Column, i: number, wanted: Expected): boolean {
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
