import { columnLetters } from "../../cells";
import type { LineHeading, Pool } from "../tables/section";
import type { Candidate, Role, RoleLine } from "../types";
import { advantage } from "./assign";
import type { PoolBlock } from "./read-pool";

/** The roles of a block with their reasons, margins and the next best lines. */
export function roleLines(block: PoolBlock): { roles: Map<Role, RoleLine>; repeats: RoleLine[] } {
  const roles = new Map<Role, RoleLine>();
  for (const [role, line] of block.given) roles.set(role, roleLine(block, role, line));
  const repeats = (block.part.core?.repeats ?? [])
    .filter((line) => line !== block.given.get("pressure"))
    .map((line) => roleLine(block, "pressure", line));
  return { roles, repeats };
}

function roleLine(block: PoolBlock, role: Role, line: number): RoleLine {
  const { ledger, given, words, pool } = block;
  const taken = new Set(given.values());
  const next = linesFor(block).filter((other) => other !== line && !taken.has(other));
  const best = Math.max(0, ...next.map((other) => advantage(ledger, other, role)));
  return {
    role,
    line,
    heading: headingOf(pool.headings.get(line)),
    unit: words.get(line)?.unit?.name,
    evidence: [...ledger.of(line, role)].sort((a, b) => b.weight - a.weight),
    margin: advantage(ledger, line, role) - best,
  };
}

function linesFor({ part }: PoolBlock): number[] {
  return [...part.own, ...part.shared];
}

/** The lines that may have a role, the likeliest first. */
export function candidatesFor(block: PoolBlock, role: Role): Candidate[] {
  const { pool, ledger } = block;
  return linesFor(block)
    .map((line) => ({ line, name: lineName(pool, line), weight: ledger.weight(line, role) }))
    .sort((a, b) => b.weight - a.weight || a.line - b.line);
}

/** The name by which a user's choice means a line. */
export function lineName(pool: Pool, line: number): string {
  const name = headingOf(pool.headings.get(line));
  const isAlone = pool.lines.every(
    (other) => other === line || headingOf(pool.headings.get(other)) !== name,
  );
  return name !== "" && isAlone
    ? name
    : `${pool.sections[0]?.cells.turned ? "row" : "column"} ${lettersOf(pool, line)}`;
}

/** Letters of the column, or number of the row, in the first table of the pool. */
function lettersOf(pool: Pool, line: number): string {
  const [first] = pool.sections;
  const at = line + (first?.shift ?? 0);
  return first?.cells.turned ? String(at + 1) : columnLetters(at);
}

/** The lines that a user's choice means: by the heading with those above it, by the heading, by letters. */
export function linesMeant(pool: Pool, name: string): number[] {
  const same = (text: string | undefined) =>
    text?.trim().toLowerCase() === name.trim().toLowerCase();
  const ways = [
    (line: number) => same(headingOf(pool.headings.get(line))),
    (line: number) => same(pool.headings.get(line)?.text),
    (line: number) => same(lineName(pool, line)) || same(lettersOf(pool, line)),
  ];
  for (const is of ways) {
    const found = pool.lines.filter(is);
    if (found.length > 0) return found;
  }
  return [];
}

export function headingOf(heading: LineHeading | undefined): string {
  return heading
    ? [...heading.parents.filter((parent) => parent !== heading.text), heading.text]
        .filter((text) => text !== "")
        .join(" / ")
    : "";
}
