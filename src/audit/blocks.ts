/** A run of rows of one column most of which hold the same formula. Indexes into the column's cells. */
export interface Block {
  readonly shape: number;
  readonly cells: readonly number[];
  /** Those of `cells` that do otherwise. */
  readonly departures: readonly number[];
}

/** So many rows alike make a pattern, and at least this share of the rows must follow it. */
export const leastRows = 3;
const leastShare = 0.6;

/**
 * The blocks of one stretch of a column, given the codes of its cells from the top: the id of a
 * formula's shape, or a negative number for what is typed. Runs of three formulas alike stand by
 * themselves, so that tables one above the other are not held against each other.
 */
export function blocksOf(codes: ArrayLike<number>): Block[] {
  const runs = strongRuns(codes);
  if (runs.length === 0) return wholeBlock(codes);
  return runs.flatMap((run, i) => {
    const start = i === 0 ? 0 : run.from;
    const end = runs[i + 1]?.from ?? codes.length;
    return blockAround(codes, run.shape, start, end, runs[i + 1]?.shape);
  });
}

interface Run {
  readonly shape: number;
  readonly from: number;
}

/** Runs of at least three formulas alike; neighbours of the same shape are one. */
function strongRuns(codes: ArrayLike<number>): Run[] {
  const runs: Run[] = [];
  for (let from = 0, to = 0; from < codes.length; from = to) {
    const shape = codes[from] as number;
    while (to < codes.length && codes[to] === shape) to++;
    if (shape >= 0 && to - from >= leastRows && runs.at(-1)?.shape !== shape)
      runs.push({ shape, from });
  }
  return runs;
}

function blockAround(
  codes: ArrayLike<number>,
  shape: number,
  start: number,
  end: number,
  next?: number,
): Block[] {
  const cells: number[] = [];
  const departures: number[] = [];
  for (let i = start; i < end; i++) {
    // A row between two blocks may belong to the one below.
    if (codes[i] !== shape && codes[i] === next) continue;
    cells.push(i);
    if (codes[i] !== shape) departures.push(i);
  }
  const alike = cells.length - departures.length;
  if (alike >= leastShare * cells.length) return [{ shape, cells, departures }];
  // What stands before the first and after the last of its rows may be of another kind.
  const first = cells.findIndex((i) => codes[i] === shape);
  const last = cells.findLastIndex((i) => codes[i] === shape);
  const inner = cells.slice(first, last + 1);
  if (inner.length < cells.length && alike >= leastShare * inner.length)
    return [{ shape, cells: inner, departures: inner.filter((i) => codes[i] !== shape) }];
  return [{ shape, cells: cells.filter((i) => codes[i] === shape), departures: [] }];
}

function wholeBlock(codes: ArrayLike<number>): Block[] {
  const counts = new Map<number, number>();
  let shape = -1;
  for (let i = 0; i < codes.length; i++) {
    const code = codes[i] as number;
    if (code < 0) continue;
    counts.set(code, (counts.get(code) ?? 0) + 1);
    if ((counts.get(code) as number) > (counts.get(shape) ?? 0)) shape = code;
  }
  if ((counts.get(shape) ?? 0) < leastRows) return [];
  return blockAround(codes, shape, 0, codes.length);
}
