import { boundsOf, cellName } from "../../cells";

/** Excel takes addresses of up to 8,192 characters. */
const longest = 8_000;

/**
 * Cells as addresses that name many at once, "A1:A3,B7": neighbours in a column joined, none
 * longer than Excel takes.
 */
export function addressesOf(cells: Iterable<string>): string[] {
  const byCol = new Map<number, number[]>();
  for (const cell of cells) {
    const block = boundsOf(cell);
    if (!block) continue;
    const rows = byCol.get(block.left);
    if (rows) rows.push(block.top);
    else byCol.set(block.left, [block.top]);
  }
  const parts = [...byCol].sort(([a], [b]) => a - b).flatMap(([col, rows]) => runs(col, rows));
  const addresses: string[] = [];
  for (const part of parts) {
    const last = addresses.at(-1);
    if (last === undefined || last.length + part.length + 1 > longest) addresses.push(part);
    else addresses[addresses.length - 1] = `${last},${part}`;
  }
  return addresses;
}

function runs(col: number, rows: readonly number[]): string[] {
  const sorted = [...new Set(rows)].sort((a, b) => a - b);
  const out: string[] = [];
  let first = sorted[0] as number;
  sorted.forEach((row, i) => {
    if (sorted[i + 1] === row + 1) return;
    out.push(first === row ? cellName(row, col) : `${cellName(first, col)}:${cellName(row, col)}`);
    first = sorted[i + 1] as number;
  });
  return out;
}
