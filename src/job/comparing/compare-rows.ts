import { plainName } from "../fit";
import type { Table } from "../read";
import { CellChanges } from "./cell-changes";
import type { Change } from "./change";

/** Changes of the rows of one kind of sheet; either state may be without it. */
export function compareRows(before: Table | undefined, after: Table | undefined): Change[] {
  const old = keysOf(before);
  const now = keysOf(after);
  const changes: Change[] = [];
  const found = new CellChanges();
  for (const [key, i] of now) {
    const was = old.get(key);
    if (!after) continue;
    if (was === undefined || !before) changes.push(wholeRow("row added", after, i));
    else compareFields(before, was, after, i, found);
  }
  for (const [key, i] of old)
    if (before && !now.has(key)) changes.push(wholeRow("row removed", before, i));
  return [...changes, ...found.all()];
}

/** Rows by their names; of several with the same name the first, the second and so on. */
export function keysOf(table: Table | undefined): Map<string, number> {
  const keys = new Map<string, number>();
  const seen = new Map<string, number>();
  for (let i = 0; i < (table?.length ?? 0); i++) {
    const name = namesOf(table as Table, i)
      .map(plainName)
      .join("\u0000");
    const count = (seen.get(name) ?? 0) + 1;
    seen.set(name, count);
    keys.set(`${name}\u0000${count}`, i);
  }
  return keys;
}

function namesOf(table: Table, i: number): string[] {
  return table.layout.names.map((key) => (table.has(key) ? table.text(key, i) : ""));
}

export function aboutOf(table: Table, i: number): string {
  return namesOf(table, i)
    .filter((name) => name !== "")
    .join(", ");
}

function wholeRow(kind: "row added" | "row removed", table: Table, i: number): Change {
  const [first = ""] = table.layout.names;
  return {
    kind,
    sheet: table.placeOrHome(first, i).grid.name,
    cell: table.ref(first, i),
    about: aboutOf(table, i),
    field: "",
    before: "",
    after: "",
    rows: 1,
  };
}

function compareFields(
  before: Table,
  was: number,
  after: Table,
  i: number,
  found: CellChanges,
): void {
  const row = { sheet: after.home(i).grid.name, about: aboutOf(after, i), rows: 1 };
  const told = new Set<string>();
  for (const { key, title } of after.layout.fields) {
    if (!before.has(key, was) && !after.has(key, i)) continue;
    // A cell may stand for two fields: the room as written, and its kind.
    const cells = `${before.ref(key, was)} ${after.ref(key, i)}`;
    if (told.has(cells)) continue;
    told.add(cells);
    const field = after.has(key, i) ? after.heading(key, i) : before.heading(key, was) || title;
    const where = { ...row, cell: after.ref(key, i), field };
    const kind = key === "constant" ? "constant" : "typed";
    found.compare(held(before, key, was), held(after, key, i), where, kind);
  }
}

function held(table: Table, key: string, i: number) {
  const { row, col } = table.placeOrHome(key, i);
  return { row, col, value: table.stored(key, i), formula: table.formula(key, i) };
}
