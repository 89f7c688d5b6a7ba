import type { Audit } from "./audit";
import { blocksOf, leastRows } from "./blocks";
import type { Shape } from "./formula-shape";
import { held, ofColumn, type ScannedColumn, type SheetScan } from "./sheet-scan";
import { type PlacedBlock, tellBlock } from "./tell";

/** A formula, or the first of a block of formulas alike, whose ranges are looked at for themselves. */
export interface LoneFormula {
  readonly scan: SheetScan;
  readonly row: number;
  readonly col: number;
  readonly shape: Shape;
  /** How many rows have it. */
  readonly count: number;
  readonly lastRow: number;
}

/** Tells of every departure in a column; returns the formulas that stand for the rest. */
export function auditColumn(audit: Audit, scan: SheetScan, column: ScannedColumn): LoneFormula[] {
  const { col } = column;
  const { alone, blocks } = partsOf(scan, column);
  for (const block of blocks) tellBlock(audit, { ...block, scan, col });
  return alone.map(({ code, ...place }) => {
    return { ...place, scan, col, shape: audit.shapes.all[code] as Shape };
  });
}

type Alone = Pick<LoneFormula, "row" | "lastRow" | "count"> & { readonly code: number };

/** The formulas of a column that stand for themselves or for all of a stretch, and the blocks of the rest. */
const partsOf = ofColumn(({ stretch }, { codes }) => {
  const alone: Alone[] = [];
  const blocks: Omit<PlacedBlock, "scan" | "col">[] = [];
  const keep = (code: number, row: number, lastRow = row, count = 1) =>
    alone.push({ code, row, lastRow, count });
  for (let from = 0, to = 0; from < codes.length; from = to) {
    to = endOf(stretch, from);
    // Totals, within a stretch or outside, stand for themselves.
    for (let row = from; row < to; row++)
      if (stretch[row] === 0 && (codes[row] as number) >= 0) keep(codes[row] as number, row);
    if (stretch[from] === 0) continue;
    if (isAlike(codes, from, to)) {
      keep(codes[from] as number, from, to - 1, to - from);
      continue;
    }
    const rows = filledRows(codes, stretch, from, to);
    const own = rows.map((row) => codes[row] as number);
    const seen = new Uint8Array(rows.length);
    for (const block of blocksOf(own)) {
      const sound = block.cells.filter((at) => own[at] === block.shape);
      for (const at of block.cells) seen[at] = 1;
      const [first, last] = [sound[0], sound.at(-1)].map((at) => rows[at as number] as number);
      keep(block.shape, first as number, last, sound.length);
      blocks.push({ ...block, codes: own, rows });
    }
    own.forEach((code, at) => {
      if (code >= 0 && !seen[at]) keep(code, rows[at] as number);
    });
  }
  return { alone, blocks };
});

/** Where the stretch ends that begins at a row; the rows of no stretch below it come one by one. */
function endOf(stretch: Int32Array, from: number): number {
  const number = stretch[from];
  let end = from + 1;
  if (number === 0) return end;
  for (let row = end; row < stretch.length; row++) {
    if (stretch[row] === number) end = row + 1;
    else if (stretch[row] !== 0) break;
  }
  return end;
}

/** Whether one formula stands in every row: most columns need no closer look. */
function isAlike(codes: Int32Array, from: number, to: number): boolean {
  const code = codes[from] as number;
  if (code < 0 || to - from < leastRows) return false;
  for (let row = from + 1; row < to; row++) if (codes[row] !== code) return false;
  return true;
}

/** The rows of a stretch in which a column is filled; none where it holds no formula. */
function filledRows(codes: Int32Array, stretch: Int32Array, from: number, to: number): number[] {
  const rows: number[] = [];
  let hasFormula = false;
  for (let row = from; row < to; row++) {
    const code = codes[row] as number;
    if (code === held.blank || stretch[row] === 0) continue;
    rows.push(row);
    hasFormula ||= code >= 0;
  }
  return hasFormula ? rows : [];
}
