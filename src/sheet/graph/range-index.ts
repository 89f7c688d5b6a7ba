import { holdsCell, type Rectangle } from "../../cells";
import { type Grid, RangeNode } from "../grid";

/** Heights of the blocks of rows that ranges are filed under, as powers of two. */
const levels = [4, 8, 12, 16, 20];

/** The ranges that formulas read on one sheet, found by a cell they hold. */
export class RangeIndex {
  private readonly nodes = new Map<string, RangeNode>();
  private readonly blocks = levels.map(() => new Map<number, Set<RangeNode>>());

  constructor(private readonly grid: Grid) {}

  /** The node of a range, made when missing. */
  node(extent: Rectangle): RangeNode {
    const { top, left, bottom, right } = extent;
    const key = `${top},${left},${bottom},${right}`;
    const known = this.nodes.get(key);
    if (known) return known;
    const made = new RangeNode(this.grid, { top, left, bottom, right });
    this.nodes.set(key, made);
    this.file(made, (block, number) => {
      const nodes = block.get(number);
      if (nodes) nodes.add(made);
      else block.set(number, new Set([made]));
    });
    return made;
  }

  /** Forgets a range that no formula reads any longer. */
  drop(node: RangeNode): void {
    const { top, left, bottom, right } = node.extent;
    this.nodes.delete(`${top},${left},${bottom},${right}`);
    this.file(node, (block, number) => block.get(number)?.delete(node));
  }

  /** Calls `visit` for every range that holds a cell. */
  forEachAt(row: number, col: number, visit: (node: RangeNode) => void): void {
    for (let i = 0; i < levels.length; i++)
      for (const node of this.blocks[i]!.get(row >> levels[i]!) ?? [])
        if (holdsCell(node.extent, row, col)) visit(node);
  }

  /** A range lies in one or two blocks of the lowest level that is high enough for it. */
  private file(
    { extent }: RangeNode,
    put: (block: Map<number, Set<RangeNode>>, number: number) => void,
  ): void {
    const found = levels.findIndex((bits) => (extent.bottom >> bits) - (extent.top >> bits) <= 1);
    const level = found < 0 ? levels.length - 1 : found;
    const bits = levels[level]!;
    const block = this.blocks[level]!;
    for (let number = extent.top >> bits; number <= extent.bottom >> bits; number++)
      put(block, number);
  }
}
