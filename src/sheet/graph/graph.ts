import { holdsCell, kept, type Rectangle } from "../../cells";
import type { FormulaCell, Grid, RangeNode } from "../grid";
import type { Program } from "../program";
import { RangeIndex } from "./range-index";

type Readers = FormulaCell | Set<FormulaCell>;

/** A place on a sheet whose value changed. */
export interface Place {
  readonly grid: Grid;
  readonly row: number;
  readonly col: number;
}

/** Which formulas read which cells. Single cells and ranges are kept apart, ranges shared. */
export class Graph {
  private readonly readers = new Map<Grid, Readers[][]>();
  private readonly indexes = new Map<Grid, RangeIndex>();
  readonly volatile = new Set<FormulaCell>();
  /** Those whose reads are not known beforehand. */
  readonly seeking = new Set<FormulaCell>();
  private pass = 0;

  /** `blocked` holds the anchors whose spill waits for cells to become free. */
  constructor(private readonly blocked: Set<FormulaCell>) {}

  nextPass(): number {
    return ++this.pass;
  }

  /** Enters what a formula cell reads; its program must be compiled. */
  add(cell: FormulaCell, program: Program): void {
    if (program.isVolatile || program.seeks) this.volatile.add(cell);
    if (program.seeks) this.seeking.add(cell);
    const ranges: RangeNode[] = [];
    forEachRead(cell, program, (grid, extent) => {
      if (isCell(extent)) this.addReader(grid, extent.top, extent.left, cell);
      else {
        const node = this.index(grid).node(extent);
        node.dependents.add(cell);
        ranges.push(node);
      }
    });
    cell.ranges = ranges;
  }

  /** Forgets what a formula cell reads, before it is replaced. */
  remove(cell: FormulaCell): void {
    this.volatile.delete(cell);
    this.seeking.delete(cell);
    this.blocked.delete(cell);
    for (const node of cell.ranges) {
      node.dependents.delete(cell);
      if (node.dependents.size === 0) this.index(node.grid).drop(node);
    }
    cell.ranges = [];
    const { program } = cell;
    if (!program) return;
    forEachRead(cell, program, (grid, extent) => {
      if (!isCell(extent)) return;
      const line = this.readers.get(grid)?.[extent.top];
      const readers = line?.[extent.left];
      if (readers instanceof Set) readers.delete(cell);
      else if (readers === cell) delete line![extent.left];
    });
  }

  /** Everything that depends on the changed places, directly or not, marked as due in this pass. */
  due(changed: Iterable<Place>, also: Iterable<FormulaCell>, pass: number): FormulaCell[] {
    const found: FormulaCell[] = [];
    const open: Place[] = [...changed];
    const mark = (cell: FormulaCell) => {
      if (cell.mark.due === pass) return;
      cell.mark.due = pass;
      found.push(cell);
      open.push(cell);
      const { extent, grid } = cell;
      if (!extent) return;
      for (let row = extent.top; row <= extent.bottom; row++)
        for (let col = extent.left; col <= extent.right; col++)
          if (grid.maker(row, col) === cell) open.push({ grid, row, col });
    };
    for (const cell of also) mark(cell);
    for (let i = 0; i < open.length; i++) {
      const { grid, row, col } = open[i]!;
      this.forEachReader(grid, row, col, mark);
      this.indexes.get(grid)?.forEachAt(row, col, (node) => {
        if (node.mark.due === pass) return;
        node.mark.due = pass;
        for (const cell of node.dependents) mark(cell);
      });
      for (const cell of this.blocked)
        if (cell.grid === grid && cell.blocked && holdsCell(cell.blocked, row, col)) mark(cell);
    }
    return found;
  }

  private forEachReader(
    grid: Grid,
    row: number,
    col: number,
    visit: (cell: FormulaCell) => void,
  ): void {
    const readers = this.readers.get(grid)?.[row]?.[col];
    if (readers === undefined) return;
    if (readers instanceof Set) for (const cell of readers) visit(cell);
    else visit(readers);
  }

  private addReader(grid: Grid, row: number, col: number, cell: FormulaCell): void {
    const lines = kept(this.readers, grid, () => []);
    let line = lines[row];
    if (!line) {
      line = [];
      lines[row] = line;
    }
    const known = line[col];
    if (known === undefined) line[col] = cell;
    else if (known instanceof Set) known.add(cell);
    else if (known !== cell) line[col] = new Set([known, cell]);
  }

  private index(grid: Grid): RangeIndex {
    return kept(this.indexes, grid, () => new RangeIndex(grid));
  }
}

/** The cells and ranges a formula reads, each as written in its own cell. */
export function forEachRead(
  cell: FormulaCell,
  program: Program,
  visit: (grid: Grid, extent: Rectangle) => void,
): void {
  for (const read of program.reads) visit(read.grid as Grid, read.at(cell.row, cell.col));
}

export function isCell(extent: Rectangle): boolean {
  return extent.top === extent.bottom && extent.left === extent.right;
}
