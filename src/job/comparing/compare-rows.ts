import { type CellValue, isoDay } from "../../cells";
import type { SheetKind } from "../columns";
import { plainName } from "../fit";
import type { Job, Table } from "../read";
import { CellChanges } from "./cell-changes";
import { type Change, textOf } from "./change";

/** Changes of the rows of one kind of sheet; either state may be without it. */
export function compareRows(old: Job, now: Job, kind: SheetKind): Change[] {
  const [before, after] = [old.tables[kind], now.tables[kind]];
  const { pairs, added, removed } = pairRows(before, after);
  const changes: Change[] = [];
  const found = new CellChanges();
  const told = new Set<string>();
  for (const i of added) changes.push(wholeRow("row added", after as Table, now, i));
  for (const [was, i] of pairs)
    compareFields(
      { table: before as Table, i: was },
      { table: after as Table, i },
      now,
      found,
      told,
    );
  for (const i of removed) changes.push(wholeRow("row removed", before as Table, old, i));
  return [...changes, ...found.all()];
}

/** The rows of two states that are one, in the order of the later state, and those that are not. */
interface Pairs {
  readonly pairs: readonly (readonly [was: number, is: number])[];
  readonly added: readonly number[];
  readonly removed: readonly number[];
}

/**
 * Rows are one by their names, of several with the same name the first, the second and so on. Where
 * the room stands in for a name that is not there, a row whose room alone changed is the same too.
 */
export function pairRows(before: Table | undefined, after: Table | undefined): Pairs {
  const [old, now] = [keysOf(before, namesOf), keysOf(after, namesOf)];
  const pairs: [number, number][] = [];
  const match = (olds: Map<string, number>, news: ReadonlyMap<string, number>) => {
    const left: number[] = [];
    for (const [key, i] of news) {
      const was = olds.get(key);
      if (was === undefined) left.push(i);
      else pairs.push([was, i]);
      olds.delete(key);
    }
    return left;
  };
  const left = match(old, now);
  const isUnnamed = (table: Table | undefined) => (i: number) =>
    (table as Table).layout.names.some((key) => table?.text(key, i) === "");
  const firstName = (table: Table, i: number) => namesOf(table, i).slice(0, 1);
  const [lost, come] = [[...old.values()].filter(isUnnamed(before)), left.filter(isUnnamed(after))];
  const olds = keysOf(before, firstName, lost);
  const added = [
    ...left.filter((i) => !isUnnamed(after)(i)),
    ...match(olds, keysOf(after, firstName, come)),
  ];
  const met = new Set(pairs.map(([was]) => was));
  return {
    pairs: pairs.sort(([, a], [, b]) => a - b),
    added: added.sort((a, b) => a - b),
    removed: [...old.values()].filter((i) => !met.has(i)),
  };
}

/** Rows by their names, with a number for those of the same name. */
function keysOf(
  table: Table | undefined,
  names: (table: Table, i: number) => readonly string[],
  rows: Iterable<number> = Array(table?.length ?? 0).keys(),
): Map<string, number> {
  const keys = new Map<string, number>();
  const seen = new Map<string, number>();
  for (const i of rows) {
    const name = names(table as Table, i)
      .map(plainName)
      .join("\u0000");
    const count = (seen.get(name) ?? 0) + 1;
    seen.set(name, count);
    keys.set(`${name}\u0000${count}`, i);
  }
  return keys;
}

function namesOf(table: Table, i: number): string[] {
  const names = table.layout.names.map((key) => (table.has(key) ? table.text(key, i) : ""));
  return names.includes("") && table.has("room") ? [...names, table.text("room", i)] : names;
}

/** What a change calls its row. */
export function aboutOf({ fans }: Job, table: Table, i: number): string {
  if (fans?.table === table) return fans.label(i);
  return namesOf(table, i)
    .filter((name) => name !== "")
    .join(", ");
}

function wholeRow(kind: "row added" | "row removed", table: Table, job: Job, i: number): Change {
  const [first = ""] = table.layout.names;
  return {
    kind,
    sheet: table.placeOrHome(first, i).grid.name,
    cell: table.ref(first, i),
    about: aboutOf(job, table, i),
    field: "",
    before: "",
    after: "",
    rows: 1,
  };
}

interface RowOf {
  readonly table: Table;
  readonly i: number;
}

function compareFields(
  old: RowOf,
  now: RowOf,
  job: Job,
  found: CellChanges,
  told: Set<string>,
): void {
  const { table: after, i } = now;
  const { table: before, i: was } = old;
  const sheet = after.home(i).grid.name;
  const row = { sheet, about: aboutOf(job, after, i), rows: 1 };
  for (const { key, title, holds } of after.layout.fields) {
    if (!before.has(key, was) && !after.has(key, i)) continue;
    // A cell may stand for two fields, the room and its kind, and for several fans of its row.
    const cells = `${sheet}!${before.ref(key, was)} ${after.ref(key, i)}`;
    if (told.has(cells)) continue;
    told.add(cells);
    const field = after.has(key, i) ? after.heading(key, i) : before.heading(key, was) || title;
    const where = { ...row, cell: after.ref(key, i), field };
    const kind = key === "constant" ? "constant" : "typed";
    const text = (value: CellValue) =>
      (holds === "date" && typeof value === "number" && isoDay(value, job.file.dateOffset)) ||
      textOf(value);
    found.compare(held(before, key, was), held(after, key, i), where, kind, text);
  }
}

function held(table: Table, key: string, i: number) {
  const { row, col } = table.placeOrHome(key, i);
  return { row, col, value: table.stored(key, i), formula: table.formula(key, i) };
}
