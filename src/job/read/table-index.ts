import { kept } from "../../cells";
import { along, type Block } from "./block";

/** Which readings of a table a cell or a row belongs to. */
export class TableIndex {
  private readonly rows = new Map<string, Map<number, number[]>>();
  private readonly cells = new Map<string, number[]>();

  constructor(blocks: readonly Block[], starts: readonly number[]) {
    for (const [at, block] of blocks.entries()) {
      const sheet = block.grid.name;
      for (let i = 0; i < block.length; i++) this.take(sheet, block, i, (starts[at] as number) + i);
    }
  }

  /** A cell that no field names belongs to the only reading of its row. */
  at(sheet: string, row: number, col?: number): readonly number[] {
    const inRow = this.rows.get(sheet)?.get(row) ?? [];
    if (col === undefined) return inRow;
    return this.cells.get(`${sheet}!${row} ${col}`) ?? (inRow.length === 1 ? inRow : []);
  }

  private take(sheet: string, block: Block, own: number, i: number): void {
    const rows = kept(this.rows, sheet, () => new Map<number, number[]>());
    if (block.isRowwise) {
      push(rows, along(block.home.rows, own), i);
      return;
    }
    for (const line of [block.home, ...block.lines.values()]) {
      const [row, col] = [along(line.rows, own), along(line.cols, own)];
      if (row < 0 || col < 0) continue;
      push(rows, row, i);
      push(this.cells, `${sheet}!${row} ${col}`, i);
    }
  }
}

function push<K>(lists: Map<K, number[]>, key: K, i: number): void {
  const list = lists.get(key);
  if (!list) lists.set(key, [i]);
  else if (list.at(-1) !== i) list.push(i);
}
