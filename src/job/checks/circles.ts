import type { Spot } from "../../cells";
import { type Grid, hasFormula } from "../grid";
import type { Job } from "../read";

/** More steps from cell to cell than these are not followed. */
const mostSteps = 3_000_000;

interface Node {
  readonly spot: Spot;
  readonly reads: Iterator<Spot>;
  readonly index: number;
  low: number;
  /** Still on the way; afterwards the number of formulas that read each other here. */
  size: number | undefined;
  readsItself: boolean;
}

/** Tells which formulas lead back to themselves, by a walk from those that are asked for (Tarjan's). */
export class Circles {
  private readonly nodes = new Map<string, Node>();
  private readonly grids: ReadonlyMap<string, Grid>;
  private steps = 0;

  constructor(private readonly job: Job) {
    this.grids = new Map(job.file.sheets.map((grid) => [grid.name, grid]));
  }

  /** How many formulas the circle of a cell has; 0 where it is in none, or too much is to be followed. */
  sizeAt(start: Spot): number {
    const known = this.nodes.get(nameOf(start));
    if (known) return sizeOf(known);
    const path: Node[] = [];
    const open: Node[] = [];
    const enter = (spot: Spot) => {
      const index = this.nodes.size;
      const reads = this.formulasReadBy(spot);
      const entered: Node = { spot, reads, index, low: index, size: undefined, readsItself: false };
      this.nodes.set(nameOf(spot), entered);
      path.push(entered);
      open.push(entered);
    };
    enter(start);
    while (path.length > 0) {
      const node = path.at(-1) as Node;
      const next = node.reads.next();
      if (!next.done) {
        const other = this.nodes.get(nameOf(next.value));
        if (!other) enter(next.value);
        else if (other.size === undefined) {
          node.low = Math.min(node.low, other.index);
          node.readsItself ||= other === node;
        }
        continue;
      }
      path.pop();
      const above = path.at(-1);
      if (above) above.low = Math.min(above.low, node.low);
      if (node.low < node.index) continue;
      const group = open.splice(open.lastIndexOf(node));
      for (const each of group) each.size = group.length;
    }
    return sizeOf(this.nodes.get(nameOf(start)) as Node);
  }

  private *formulasReadBy({ sheet, row, col }: Spot): Generator<Spot, void> {
    for (const place of this.job.file.calculator?.precedents(sheet, row, col) ?? []) {
      const grid = this.grids.get(place.sheet);
      if (!grid) continue;
      const [bottom, right] = [
        Math.min(place.bottom, grid.rowCount - 1),
        Math.min(place.right, grid.colCount - 1),
      ];
      for (let r = place.top; r <= bottom; r++)
        for (let c = place.left; c <= right; c++) {
          if (++this.steps > mostSteps) return;
          if (hasFormula(grid, r, c)) yield { sheet: grid.name, row: r, col: c };
        }
    }
  }
}

const nameOf = ({ sheet, row, col }: Spot) => `${sheet}!${row},${col}`;

const sizeOf = ({ size = 0, readsItself }: Node) => (size > 1 || readsItself ? size : 0);
