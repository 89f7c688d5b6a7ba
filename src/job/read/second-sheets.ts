import { plainName } from "../fit";
import { along, type Block } from "./block";

/** A sheet that lists again what an earlier one lists. */
export interface SecondSheet {
  readonly block: Block;
  readonly name: string;
  readonly firstName: string;
  /** The cell of its first fan. */
  readonly row: number;
  readonly col: number;
  /** Rows that the earlier sheet has too. */
  readonly rows: number;
  /** Rows of these whose readings are others. */
  readonly otherwise: number;
}

const leastRows = 3;
const leastShare = 0.8;

/**
 * Sheets of fans on which nearly every fan stands again, and none with a later date: a visit made
 * later is no copy. Their fans would count twice.
 */
export function secondSheets(blocks: readonly Block[]): SecondSheet[] {
  const found: SecondSheet[] = [];
  for (const [at, block] of blocks.entries())
    for (const first of blocks.slice(0, at)) {
      if (first.grid === block.grid || found.some((each) => each.block === first)) continue;
      const again = comparison(first, block);
      if (!again || again.rows < Math.max(leastRows, leastShare * block.length)) continue;
      const { grid, home } = block;
      const [row, col] = [along(home.rows, 0), along(home.cols, 0)];
      const names = { name: grid.name, firstName: first.grid.name };
      found.push({ block, ...names, row, col, ...again });
      break;
    }
  return found;
}

function comparison(first: Block, block: Block): Pick<SecondSheet, "rows" | "otherwise"> | null {
  const known = new Map<string, number>();
  for (let i = 0; i < first.length; i++) known.set(nameAt(first, i), i);
  let [rows, otherwise] = [0, 0];
  for (let i = 0; i < block.length; i++) {
    const before = known.get(nameAt(block, i));
    if (before === undefined) continue;
    if (Number(valueAt(block, "date", i)) > Number(valueAt(first, "date", before))) return null;
    rows++;
    if (readingsAt(block, i) !== readingsAt(first, before)) otherwise++;
  }
  return { rows, otherwise };
}

function nameAt(block: Block, i: number): string {
  const keys = ["dwelling", block.lines.has("tag") ? "tag" : "room"];
  return keys.map((key) => plainName(String(valueAt(block, key, i)))).join("\u0000");
}

function readingsAt(block: Block, i: number): string {
  const keys = [...block.lines.keys()].filter((key) => /^(reading|pressure)/.test(key)).sort();
  return keys.map((key) => String(valueAt(block, key, i) ?? "")).join(" ");
}

function valueAt(block: Block, key: string, i: number) {
  const line = block.lines.get(key);
  if (!line) return null;
  return line.values
    ? (line.values[i] ?? null)
    : block.grid.value(along(line.rows, i), along(line.cols, i));
}
