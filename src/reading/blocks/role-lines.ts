import type { LineHeading } from "../tables/section";
import type { Candidate, Role, RoleLine } from "../types";
import { advantage } from "./assign";
import type { PoolBlock } from "./read-pool";

const mostCandidates = 4;

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
  const { ledger, part, given, words, pool } = block;
  const taken = new Set(given.values());
  const candidates: Candidate[] = [...part.own, ...part.shared]
    .filter((other) => other !== line)
    .map((other) => ({
      line: other,
      heading: headingOf(pool.headings.get(other)),
      weight: ledger.weight(other, role),
    }))
    .filter(({ weight }) => weight > 0.5)
    .sort((a, b) => b.weight - a.weight)
    .slice(0, mostCandidates);
  const own = advantage(ledger, line, role);
  const next = Math.max(
    0,
    ...candidates
      .filter((other) => !taken.has(other.line))
      .map((other) => advantage(ledger, other.line, role)),
  );
  return {
    role,
    line,
    heading: headingOf(pool.headings.get(line)),
    unit: words.get(line)?.unit?.name,
    evidence: [...ledger.of(line, role)].sort((a, b) => b.weight - a.weight),
    margin: own - next,
    candidates,
  };
}

export function headingOf(heading: LineHeading | undefined): string {
  return heading
    ? [...heading.parents.filter((parent) => parent !== heading.text), heading.text]
        .filter((text) => text !== "")
        .join(" / ")
    : "";
}
