import { translateFormulaToR1C1 } from "@borgar/fx/xlsx";
import { cellName, isSameValue } from "../../cells";
import { plainFormula } from "../accepting";
import { plainName } from "../fit";
import type { Table } from "../read";
import { type Change, textOf } from "./change";

/** Changes of the rows of one kind of sheet; either state may be without it. */
export function compareRows(before: Table | undefined, after: Table | undefined): Change[] {
  const old = keysOf(before);
  const now = keysOf(after);
  const changes: Change[] = [];
  const formulas = new FormulaChanges();
  for (const [key, i] of now) {
    const was = old.get(key);
    if (!after) continue;
    if (was === undefined || !before) changes.push(wholeRow("row added", after, i));
    else changes.push(...fieldChanges(before, was, after, i, formulas));
  }
  for (const [key, i] of old)
    if (before && !now.has(key)) changes.push(wholeRow("row removed", before, i));
  return [...changes, ...formulas.all()];
}

/** Rows by their names; of several with the same name the first, the second and so on. */
function keysOf(table: Table | undefined): Map<string, number> {
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

function aboutOf(table: Table, i: number): string {
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

function fieldChanges(
  before: Table,
  was: number,
  after: Table,
  i: number,
  formulas: FormulaChanges,
): Change[] {
  const changes: Change[] = [];
  const row = { sheet: after.home(i).grid.name, about: aboutOf(after, i), rows: 1 };
  for (const { key, title } of after.layout.fields) {
    if (!before.has(key) && !after.has(key)) continue;
    const field = after.has(key) ? after.heading(key) : before.heading(key) || title;
    const cell = after.ref(key, i);
    const [old, now] = [before.formula(key, was), after.formula(key, i)];
    const [oldValue, value] = [before.raw(key, was), after.raw(key, i)];
    const where = { ...row, cell, field };
    if (old === null && now === null) {
      if (isSameValue(oldValue, value)) continue;
      const kind = key === "constant" ? "constant" : "typed";
      changes.push({ ...where, kind, before: textOf(oldValue), after: textOf(value) });
      continue;
    }
    if (old === null || now === null)
      changes.push({
        ...where,
        kind: "formula",
        before: old === null ? textOf(oldValue) : `=${plainFormula(old)}`,
        after: now === null ? textOf(value) : `=${plainFormula(now)}`,
      });
    else formulas.compare(placed(before, key, was, old), placed(after, key, i, now), where);
    if (!isSameValue(oldValue, value))
      changes.push({ ...where, kind: "result", before: textOf(oldValue), after: textOf(value) });
  }
  return changes;
}

interface Placed {
  readonly formula: string;
  readonly row: number;
  readonly col: number;
}

function placed(table: Table, key: string, i: number, formula: string): Placed {
  const { row, col } = table.placeOrHome(key, i);
  return { formula: plainFormula(formula), row, col };
}

/** Changed formulas, those that changed alike in many rows as one. */
class FormulaChanges {
  private readonly found = new Map<string, Change>();

  compare(old: Placed, now: Placed, where: Omit<Change, "kind" | "before" | "after">): void {
    if (old.col === now.col && withoutRow(old) === withoutRow(now)) return;
    const [was, is] = [relative(old), relative(now)];
    if (was === is) return;
    const key = `${where.field}\u0000${was}\u0000${is}`;
    const same = this.found.get(key);
    this.found.set(
      key,
      same
        ? { ...same, rows: same.rows + 1 }
        : { ...where, kind: "formula", before: `=${old.formula}`, after: `=${now.formula}` },
    );
  }

  all(): Change[] {
    return [...this.found.values()];
  }
}

/** The text without the own row's number: a quick look that spares the translation of most. */
function withoutRow({ formula, row }: Placed): string {
  const own = String(row + 1);
  return formula.replace(/\d+/g, (digits) => (digits === own ? "#" : digits));
}

function relative({ formula, row, col }: Placed): string {
  return translateFormulaToR1C1(formula, cellName(row, col));
}
