import { type Edition, editions, type System } from "../../../editions";
import type { Source } from "../../../formulas";
import { type NameKindId, nameKinds } from "../names";
import type { Table, TableCell, TableSheet } from "../table-sheet";

/** Makes a table of the editions, or gives the one that was made. */
export type TableMaker = (sheet: TableSheet) => Table;

const systems = ["ip", "si"] as const;

/** The number by which the tables know a name. */
export function numberOfName(kind: NameKindId, name: string): number {
  return nameKinds[kind].known.indexOf(name) + 1;
}

/** The clause and the mark of a number. */
export function traced({ work, clause, mark }: Source): [string, string] {
  return [clause === "" ? work : `${work}, ${clause}`, mark];
}

export function forEachSystem(see: (edition: Edition, system: System) => void): void {
  for (const edition of editions) for (const system of edition.systems) see(edition, system);
}

/** The systems in which a rule states all of these numbers. */
export function statedSystems(
  ...rates: readonly Readonly<Partial<Record<System, number>>>[]
): System[] {
  return systems.filter((system) => rates.every((rate) => rate[system] !== undefined));
}

/** A table whose rows are numbered in a last column "No.". */
export function numbered(
  sheet: TableSheet,
  title: string,
  headings: readonly string[],
  rows: readonly (readonly TableCell[])[],
): Table {
  const lines = rows.map((row, i) => [...row, i + 1]);
  return sheet.table(title, [...headings, "No."], () => lines, lines.length);
}
