import { grouped } from "../../cells";
import { type Cells, Kind } from "../cells/cells";
import { natures } from "../roles";
import type { Section } from "../tables/section";
import type { Role } from "../types";
import type { PoolBlock } from "./read-pool";

/** The fans of one block on one sheet: where each stands and whether it was read. */
export interface Listing {
  readonly cells: Cells;
  readonly rows: Int32Array;
  /** Added to a line of the block for the column of each fan. */
  readonly shifts: Int32Array;
  readonly read: Uint8Array;
  readonly sections: readonly Section[];
  readonly skipped: readonly number[];
  /** For each fan, the row above its group that names what all of it share; −1 where none does. */
  readonly groups: Int32Array;
}

/** A block with the fans that it lists, sheet by sheet. */
export interface Listed {
  readonly block: PoolBlock;
  readonly listings: readonly Listing[];
}

/** Lists the fans of a block, sheet by sheet. */
export function listFans(block: PoolBlock): Listing[] {
  return [...grouped(block.pool.sections, ({ cells }) => cells.grid).values()]
    .map((sections) => listSheet(block, sections))
    .filter(({ rows }) => rows.length > 0);
}

function listSheet(block: PoolBlock, sections: readonly Section[]): Listing {
  const found: { row: number; shift: number; read: number; group: number }[] = [];
  const skipped: number[] = [];
  for (const section of sections) {
    skipped.push(...section.totals);
    const listed = section.texts.filter((row) => isListed(block, section, row));
    const lead = section.texts.filter((row) => !listed.includes(row));
    skipped.push(...lead);
    const rows = listed.length
      ? [...section.records, ...listed].sort((a, b) => a - b)
      : section.records;
    let next = 0;
    let group = -1;
    for (const row of rows) {
      while (next < lead.length && lead[next]! < row) group = lead[next++]!;
      if (!isFan(block, section, row)) {
        skipped.push(row);
        continue;
      }
      found.push({ row, shift: section.shift, read: isRead(block, section, row) ? 1 : 0, group });
    }
  }
  return {
    cells: sections[0]!.cells,
    rows: Int32Array.from(found, ({ row }) => row),
    shifts: Int32Array.from(found, ({ shift }) => shift),
    read: Uint8Array.from(found, ({ read }) => read),
    groups: Int32Array.from(found, ({ group }) => group),
    sections,
    skipped: skipped.sort((a, b) => a - b),
  };
}

/** A row of texts that names a fan: two or more of its words stand where the block's words stand. */
function isListed({ given, part }: PoolBlock, { cells, shift }: Section, row: number): boolean {
  let words = 0;
  for (const [role, line] of given) {
    if (!part.own.includes(line) && part.shared.length && role !== "dwelling" && role !== "room")
      continue;
    if (natures[role] === "number" || role === "note" || role === "verdict") continue;
    const col = line + shift;
    if (cells.has(row, col) && cells.kind(row, col) === Kind.text && !cells.hasFormula(row, col))
      words++;
  }
  return words >= 2;
}

/** In a part of a row, and in rows of another kind, only what was typed there makes a fan. */
function isFan({ given, part }: PoolBlock, { cells, shift }: Section, row: number): boolean {
  let own = 0;
  for (const [role, line] of given) {
    const col = line + shift;
    if (!cells.has(row, col) || cells.isBlank(row, col) || cells.hasFormula(row, col)) continue;
    if (part.shared.length && !part.own.includes(line)) continue;
    if (role === "note" || (part.shared.length && role === "date")) continue;
    own++;
  }
  return own >= (part.shared.length ? 1 : Math.min(2, given.size));
}

/** A pressure, or where none is kept a flow, that a person has entered. */
function isRead({ given, part }: PoolBlock, { cells, shift }: Section, row: number): boolean {
  const holds = (line: number | undefined, typed: boolean) => {
    if (line === undefined || !cells.has(row, line + shift)) return false;
    const kind = cells.kind(row, line + shift);
    // A flow of 0 beside a blank pressure is a formula's answer to a blank, kept as a value.
    if (typed && (cells.hasFormula(row, line + shift) || cells.number(row, line + shift) === 0))
      return false;
    return (
      kind === Kind.number ||
      kind === Kind.textNumber ||
      (kind === Kind.text &&
        !cells.hasFormula(row, line + shift) &&
        /\d/.test(cells.text(row, line + shift)))
    );
  };
  const line = (role: Role) => given.get(role);
  if (line("pressure") === undefined) return holds(line("flow"), false);
  return (
    holds(line("pressure"), false) ||
    part.core?.repeats.some((repeat) => holds(repeat, true)) === true ||
    holds(line("flow"), true)
  );
}
