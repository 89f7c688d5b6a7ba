import { kept, type Rectangle, runsOf } from "../../../cells";

interface Place {
  readonly row: number;
  readonly col: number;
}

/** Cells as few rectangles: runs along rows, equal runs of neighbouring rows joined. */
export function rectangles(cells: readonly Place[]): Rectangle[] {
  const byRow = new Map<number, number[]>();
  for (const { row, col } of cells) kept(byRow, row, () => []).push(col);
  const done: Rectangle[] = [];
  let open: Rectangle[] = [];
  for (const [row, cols] of [...byRow].sort((a, b) => a[0] - b[0])) {
    const grown: Rectangle[] = [];
    for (const run of runs(cols)) {
      const above = open.find((rect) => rect.bottom === row - 1 && fits(rect, run));
      grown.push(above ? { ...above, bottom: row } : { top: row, bottom: row, ...run });
    }
    done.push(
      ...open.filter((rect) => !grown.some((next) => fits(rect, next) && next.top === rect.top)),
    );
    open = grown;
  }
  return [...done, ...open];
}

interface Run {
  readonly left: number;
  readonly right: number;
}

function fits(a: Run, b: Run): boolean {
  return a.left === b.left && a.right === b.right;
}

function runs(cols: readonly number[]): Run[] {
  return runsOf([...cols].sort((a, b) => a - b)).map(([left, right]) => ({ left, right }));
}
