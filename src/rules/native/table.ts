import { type Edition, editions, type System } from "../../editions";
import type { Source } from "../../formulas";
import { numberOfName } from "./names";

export type TableCell = number | string | null | { readonly formula: string };

/** A row by its headings; all rows of a table have the same, in the same order. */
export type TableRow = Readonly<Record<string, TableCell>>;

/** A table on a sheet of tables: where each of its columns stands. */
export interface Table {
  readonly rows: number;
  /** The cells of a column, as a formula anywhere writes them. */
  column(heading: string): string;
  /** One cell, row from 0. */
  cell(row: number, heading: string): string;
  /** From one column to another. */
  block(first: string, last: string): string;
}

/** A sheet that holds tables one below the other, each under its title and headings. */
export interface TableSheet {
  /** The table of this title; made the first time. `rows` may refer to the table itself. */
  table(
    title: string,
    headings: readonly string[],
    rows: (own: Table) => readonly (readonly TableCell[])[],
    count: number,
  ): Table;
}

/** Makes a table of the editions, or gives the one that was made. */
export type TableMaker = (sheet: TableSheet) => Table;

const systems = ["ip", "si"] as const;

/** The clause and the mark of a number. */
export function traced({ work, clause, mark }: Source): TableRow {
  return { Clause: clause === "" ? work : `${work}, ${clause}`, Mark: mark };
}

/** A row of an edition: its name first; its number, other numbers of names and the source last. */
export function rowOf(
  edition: string,
  cells: TableRow,
  source: Source,
  numbers?: TableRow,
): TableRow {
  const own = { "Edition no.": numberOfName("edition", edition), ...numbers };
  return { Edition: edition, ...cells, ...own, ...traced(source) };
}

/** The rows of each edition in each of its systems. */
export function bySystem(
  rows: (edition: Edition, system: System) => readonly TableRow[],
): TableRow[] {
  return editions.flatMap((edition) => edition.systems.flatMap((system) => rows(edition, system)));
}

/** The systems in which a rule states all of these numbers. */
export function statedSystems(
  ...rates: readonly Readonly<Partial<Record<System, number>>>[]
): System[] {
  return systems.filter((system) => rates.every((rate) => rate[system] !== undefined));
}

/** A table whose rows are numbered in a last column "No.". */
export function tableOf(title: string, rowsOf: () => readonly TableRow[]): TableMaker {
  return (sheet) => {
    const rows = rowsOf();
    const lines = rows.map((row, i) => [...Object.values(row), i + 1]);
    return sheet.table(title, [...Object.keys(rows[0] ?? {}), "No."], () => lines, lines.length);
  };
}
