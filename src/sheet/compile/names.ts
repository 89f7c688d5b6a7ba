import { parseA1Ref, parseStructRef } from "@borgar/fx/xlsx";
import { errors, holdsCell, parseRectangle, type Rectangle } from "../../cells";
import type { TableInfo } from "../../workbook";
import { Area } from "../area";
import type { Grid } from "../grid";
import { Reference } from "../program";
import { Unsupported } from "../values";
import type { Expr, Scope } from "./expr";
import { areaExpr, sheetOf } from "./references";

const allFixed = { top: true, left: true, bottom: true, right: true };

/** What a defined name stands for: its formula and the sheet it is read from; or a table's data. */
export function definition(
  text: string,
  scope: Scope,
): { readonly formula: string; readonly grid: Grid } | { readonly table: TableInfo } {
  const parsed = parseA1Ref(text);
  const name = parsed && "name" in parsed ? String(parsed.name) : text;
  const grid = parsed ? sheetOf(parsed, scope) : scope.home;
  const defined = scope.book.name(name, grid.name);
  if (defined) return { formula: defined.formula, grid };
  const table = scope.book.table(name);
  if (table) return { table };
  throw new Unsupported(`the name ${name}, which is not defined`, errors.name);
}

/** Table[Column], Table[@Column], Table[[#Headers],[A]:[B]] and the like. */
export function tableExpr(text: string, scope: Scope): Expr {
  const parsed = parseStructRef(text);
  if (!parsed) throw new Unsupported(`the table reference ${text}`);
  if (parsed.workbookName && parsed.workbookName !== "0")
    throw new Unsupported("a link to another workbook");
  if (!parsed.table) throw new Unsupported(`${text} outside a table`);
  const table = scope.book.table(parsed.table);
  if (!table)
    throw new Unsupported(`the table ${parsed.table}, which is not in the workbook`, errors.ref);
  const sections = parsed.sections ?? [];
  const columns = parsed.columns ?? [];
  return sections.includes("this row")
    ? thisRow(table, columns, scope)
    : tableArea(table, sections, columns, scope);
}

/** The data of a table, or the sections asked for. */
export function tableArea(
  table: TableInfo,
  sections: readonly string[],
  columns: readonly string[],
  scope: Scope,
): Expr {
  const grid = tableGrid(table, scope);
  const all = parseRectangle(table.ref);
  const data = dataRows(table);
  const [left, right] = columnSpan(table, columns);
  let top = data.top;
  let bottom = data.bottom;
  if (sections.includes("all")) ({ top, bottom } = all);
  else if (sections.length > 0) {
    top = sections.includes("headers")
      ? all.top
      : sections.includes("data")
        ? data.top
        : all.bottom;
    bottom = sections.includes("totals")
      ? all.bottom
      : sections.includes("data")
        ? data.bottom
        : all.top;
    const missing =
      (sections.includes("headers") && !table.headerRow) ||
      (sections.includes("totals") && !table.totalsRow);
    if (missing) return { isRange: true, run: () => errors.ref };
  }
  return areaExpr(new Reference(grid, top, left, bottom, right, allFixed), scope);
}

function thisRow(table: TableInfo, columns: readonly string[], scope: Scope): Expr {
  const grid = tableGrid(table, scope);
  const data = dataRows(table);
  const [left, right] = columnSpan(table, columns);
  const fixed = { top: false, left: true, bottom: false, right: true };
  scope.reads.push(new Reference(grid, 0, left, 0, right, fixed));
  const inside = (row: number) => holdsCell(data, row, data.left);
  const run = (row: number) => (inside(row) ? new Area(grid, row, left, row, right) : errors.value);
  if (left !== right) return { isRange: true, run };
  return { run, one: (row) => (inside(row) ? grid.get(row, left) : errors.value) };
}

function tableGrid(table: TableInfo, scope: Scope): Grid {
  const grid = scope.book.grid(table.sheet);
  if (!grid) throw new Unsupported(`the sheet ${table.sheet} of the table ${table.name}`);
  return grid;
}

/** The extent of the rows between headers and totals. */
function dataRows(table: TableInfo): Rectangle {
  const { top, left, bottom, right } = parseRectangle(table.ref);
  return {
    top: top + (table.headerRow ? 1 : 0),
    left,
    bottom: bottom - (table.totalsRow ? 1 : 0),
    right,
  };
}

function columnSpan(table: TableInfo, columns: readonly string[]): [number, number] {
  const { left, right } = parseRectangle(table.ref);
  if (columns.length === 0) return [left, right];
  const places = columns.map((name) => {
    const wanted = name.toLowerCase();
    const place = table.columns.findIndex((column) => column.toLowerCase() === wanted);
    if (place < 0)
      throw new Unsupported(`the column ${name}, which the table ${table.name} has not`);
    return left + place;
  });
  return [Math.min(...places), Math.max(...places)];
}
