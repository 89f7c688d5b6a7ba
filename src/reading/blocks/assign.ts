import type { Ledger } from "../evidence/ledger";
import { type Role, roles } from "../types";

/** By how much a role must beat "something else" to be given at all. */
const threshold = 0.8;

/** How far a line is better taken for the role than for something else. */
export function advantage(ledger: Ledger, line: number, role: Role): number {
  return ledger.weight(line, role) - threshold - Math.max(0, ledger.weight(line, "other"));
}

/** Gives each role at most one line and each line at most one role, for the best total. */
export function assign(
  ledger: Ledger,
  lines: readonly number[],
  taken: ReadonlyMap<Role, number> = new Map(),
): Map<Role, number> {
  const free = lines.filter((line) => ![...taken.values()].includes(line));
  const open = roles.filter((role) => !taken.has(role));
  const gains = open.map((role) => free.map((line) => Math.max(0, advantage(ledger, line, role))));
  const chosen = bestPairs(gains, free.length);
  const given = new Map(taken);
  open.forEach((role, at) => {
    const pick = chosen[at]!;
    if (pick >= 0 && gains[at]![pick]! > 0) given.set(role, free[pick]!);
  });
  return given;
}

/** The Hungarian method: for each row a column, −1 for none, so that the sum of gains is greatest. */
function bestPairs(gains: readonly (readonly number[])[], columns: number): number[] {
  const rows = gains.length;
  const width = columns + rows;
  const cost = (row: number, col: number) => (col < columns ? -gains[row]![col]! : 0);
  const u = new Float64Array(rows + 1);
  const v = new Float64Array(width + 1);
  const owner = new Int32Array(width + 1);
  const way = new Int32Array(width + 1);
  for (let row = 1; row <= rows; row++) {
    owner[0] = row;
    let at = 0;
    const least = new Float64Array(width + 1).fill(Number.POSITIVE_INFINITY);
    const used = new Uint8Array(width + 1);
    do {
      used[at] = 1;
      let step = Number.POSITIVE_INFINITY;
      let next = 0;
      for (let col = 1; col <= width; col++) {
        if (used[col]) continue;
        const reduced = cost(owner[at]! - 1, col - 1) - u[owner[at]!]! - v[col]!;
        if (reduced < least[col]!) {
          least[col] = reduced;
          way[col] = at;
        }
        if (least[col]! < step) {
          step = least[col]!;
          next = col;
        }
      }
      for (let col = 0; col <= width; col++)
        if (used[col]) {
          u[owner[col]!]! += step;
          v[col]! -= step;
        } else least[col]! -= step;
      at = next;
    } while (owner[at] !== 0);
    while (at) {
      owner[at] = owner[way[at]!]!;
      at = way[at]!;
    }
  }
  const chosen = new Array<number>(rows).fill(-1);
  for (let col = 1; col <= columns; col++) if (owner[col]! > 0) chosen[owner[col]! - 1] = col - 1;
  return chosen;
}
