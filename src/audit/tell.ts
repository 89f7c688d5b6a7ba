import { cellName, shown } from "../cells";
import type { Mend } from "../job";
import type { Audit } from "./audit";
import type { Block } from "./blocks";
import { departureOf } from "./departure";
import type { Shape } from "./formula-shape";
import type { SheetScan } from "./sheet-scan";
import { stayedText, stayedTextWords } from "./texts";
import { wordsOf } from "./words";

/** A block of a column with what is needed to tell of its cells. */
export interface PlacedBlock extends Block {
  readonly scan: SheetScan;
  readonly col: number;
  /** Codes of the column's cells, and the rows in which they stand. */
  readonly codes: readonly number[];
  readonly rows: readonly number[];
}

/** Tells of every departure of a block, and of the cells left blank in it. */
export function tellBlock(audit: Audit, block: PlacedBlock): void {
  for (const at of block.departures) tellDeparture(audit, block, at);
  tellMissing(audit, block);
}

function tellDeparture(audit: Audit, block: PlacedBlock, at: number): void {
  const { scan, col, codes, rows } = block;
  const { grid } = scan;
  const row = rows[at] as number;
  const code = codes[at] as number;
  const soundCell = cellName(rows[nearest(block, at)] as number, col);
  const apply = restored(row, col, soundCell);
  if (code < 0) {
    const value = grid.value(row, col);
    if (typeof value === "string" && stayedText(value)) {
      const words = stayedTextWords(value);
      audit.add("cell-formatted-as-text", grid.name, row, col, { ...words, apply });
      return;
    }
    const what = `${typedText(value)} is typed where the rows beside it have a formula`;
    const words = wordsOf("formula-typed-over", soundCell);
    audit.add("formula-typed-over", grid.name, row, col, { what, ...words, apply });
    return;
  }
  const [odd, sound] = [audit.shapes.all[code], audit.shapes.all[block.shape]] as [Shape, Shape];
  const { kind, what } = departureOf(odd, sound, row, col);
  audit.add(kind, grid.name, row, col, { what, ...wordsOf(kind, soundCell), apply });
}

function restored(row: number, col: number, formulaOf: string): Mend {
  return { label: "Restore the formula", writes: [{ cell: cellName(row, col), formulaOf }] };
}

function typedText(value: unknown): string {
  if (typeof value === "number") return shown(value);
  if (typeof value === "object" && value !== null) return (value as { error: string }).error;
  return `"${String(value)}"`;
}

/** The cell of a block that is nearest to one of its departures and has the formula. */
function nearest({ codes, shape }: PlacedBlock, at: number): number {
  for (let away = 1; away < codes.length; away++) {
    if (codes[at - away] === shape) return at - away;
    if (codes[at + away] === shape) return at + away;
  }
  return at;
}

/** Rows inside a block that are filled like their neighbours but have a blank for the formula. */
function tellMissing(audit: Audit, { scan, col, codes, rows, cells, shape }: PlacedBlock): void {
  const { grid, filled, stretch } = scan;
  for (let i = 1; i < cells.length; i++) {
    const [at, next] = [cells[i - 1] as number, cells[i] as number];
    const [above, below] = [rows[at] as number, rows[next] as number];
    if (below - above < 2) continue;
    const near = codes[at] === shape ? above : below;
    const soundCell = cellName(near, col);
    for (let row = above + 1; row < below; row++) {
      const value = grid.value(row, col);
      if (!stretch[row] || (value !== null && value !== "")) continue;
      if (5 * (filled[row] as number) < 4 * ((filled[near] as number) - 1)) continue;
      audit.add("formula-missing", grid.name, row, col, {
        what: "the cell is blank where the rows beside it have a formula",
        effect: "The row has no result.",
        mend: `Copy the formula from ${soundCell}.`,
        apply: restored(row, col, soundCell),
      });
    }
  }
}
