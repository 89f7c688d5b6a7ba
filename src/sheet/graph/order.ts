import { grouped, holdsCell, kept } from "../../cells";
import { FormulaCell, type Grid, type RangeNode } from "../grid";
import { forEachRead, isCell } from "./graph";

type Node = FormulaCell | RangeNode;

interface Frame {
  readonly node: Node;
  readonly next: Node[];
  /** Reads a cell that it makes itself; for ranges the walk finds the circle through their node. */
  readonly readsItself: boolean;
  at: number;
}

/**
 * Visits the due formula cells so that each comes after everything it reads (Tarjan's algorithm,
 * without recursion because chains of formulas are as long as a sheet). Cells that read themselves,
 * directly or around a circle, are handed to `circular` instead.
 */
export function inOrder(
  due: readonly FormulaCell[],
  pass: number,
  visit: (cell: FormulaCell) => void,
  circular: (cells: readonly FormulaCell[]) => void,
): void {
  const dueOn = grouped(due, ({ grid }) => grid);
  const settled = new Settled();
  let counter = 0;
  const frames: Frame[] = [];
  const open: Node[] = [];

  const enter = (node: Node) => {
    const { mark } = node;
    mark.seen = pass;
    mark.index = mark.low = ++counter;
    mark.open = true;
    open.push(node);
    frames.push({ node, ...successors(node, pass, dueOn, settled), at: 0 });
  };

  const close = ({ node, readsItself }: Frame) => {
    const group: FormulaCell[] = [];
    let size = 0;
    for (;;) {
      const each = open.pop()!;
      each.mark.open = false;
      size++;
      if (each instanceof FormulaCell) group.push(each);
      if (each === node) break;
    }
    const [only] = group;
    if (only === undefined) return;
    if (size > 1 || readsItself) circular(group);
    else visit(only);
  };

  for (const start of due) {
    if (start.mark.seen === pass) continue;
    enter(start);
    while (frames.length > 0) {
      const frame = frames.at(-1)!;
      const { node } = frame;
      if (frame.at < frame.next.length) {
        const next = frame.next[frame.at++]!;
        if (next.mark.seen !== pass) enter(next);
        else if (next.mark.open) node.mark.low = Math.min(node.mark.low, next.mark.index);
        continue;
      }
      frames.pop();
      const parent = frames.at(-1);
      if (parent) parent.node.mark.low = Math.min(parent.node.mark.low, node.mark.low);
      if (node.mark.low === node.mark.index) close(frame);
    }
  }
}

/** The due formulas that a formula reads, and the ranges it reads; for a range, the due in it. */
function successors(
  node: Node,
  pass: number,
  dueOn: ReadonlyMap<Grid, readonly FormulaCell[]>,
  settled: Settled,
): Pick<Frame, "next" | "readsItself"> {
  if (!(node instanceof FormulaCell))
    return { next: dueIn(node, pass, dueOn, settled), readsItself: false };
  const next: Node[] = [];
  let readsItself = false;
  const { program } = node;
  if (program)
    forEachRead(node, program, (grid, extent) => {
      if (!isCell(extent)) return;
      // What is due was asked for before.
      const maker = grid.knownMaker(extent.top, extent.left);
      if (maker === node) readsItself = true;
      else if (maker?.mark.due === pass) next.push(maker);
    });
  for (const range of node.ranges)
    if (range.mark.seen !== pass || range.mark.open) next.push(range);
  return { next, readsItself };
}

/** The due formulas that make cells of a range. */
function dueIn(
  { grid, extent }: RangeNode,
  pass: number,
  dueOn: ReadonlyMap<Grid, readonly FormulaCell[]>,
  settled: Settled,
): Node[] {
  const bottom = Math.min(extent.bottom, grid.rowCount - 1);
  const own = dueOn.get(grid) ?? [];
  // Few cells of a long column are due after an edit.
  if (own.length < bottom - extent.top && own.every((cell) => cell.extent === null))
    return own.filter((cell) => holdsCell(extent, cell.row, cell.col));
  const right = Math.min(extent.right, grid.colCount - 1);
  const next: Node[] = [];
  for (let col = extent.left; col <= right; col++)
    for (let row = settled.next(grid, extent.top, col); row <= bottom; ) {
      const maker = grid.knownMaker(row, col);
      const isDue = maker?.mark.due === pass;
      if (isDue && (maker.mark.seen !== pass || maker.mark.open)) next.push(maker);
      else settled.pass(grid, row, col);
      row = settled.next(grid, row + 1, col);
    }
  return next;
}

/**
 * Cells that ranges need not look at again: those that are not due, and those visited. Sums that grow
 * down a column look at each cell once so, and not all of them at all above.
 */
class Settled {
  private readonly columns = new Map<Grid, Map<number, number[]>>();

  /** The first row from here down that is to be looked at. */
  next(grid: Grid, row: number, col: number): number {
    const next = this.column(grid, col);
    let at = row;
    while (next[at] !== undefined) at = next[at] as number;
    for (let way = row; way !== at; ) {
      const after = next[way] as number;
      next[way] = at;
      way = after;
    }
    return at;
  }

  pass(grid: Grid, row: number, col: number): void {
    this.column(grid, col)[row] = row + 1;
  }

  private column(grid: Grid, col: number): number[] {
    const own = kept(this.columns, grid, () => new Map<number, number[]>());
    return kept(own, col, () => []);
  }
}
