import type { Candidate, Role, RoleLine } from "../types";
import { advantage } from "./assign";
import { headingOf, lineName } from "./line-names";
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
