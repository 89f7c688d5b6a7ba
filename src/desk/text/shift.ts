import { translateFormulaToA1, translateFormulaToR1C1 } from "@borgar/fx/xlsx";
import { cellName } from "../../cells";

interface Spot {
  readonly row: number;
  readonly col: number;
}

/** What a cell holds, as typed, moved to another cell: the relative references of a formula follow. */
export function shifted(content: string, from: Spot, to: Spot): string {
  if (!content.startsWith("=") || content.length === 1) return content;
  if (from.row === to.row && from.col === to.col) return content;
  const pattern = translateFormulaToR1C1(content, cellName(from.row, from.col));
  return translateFormulaToA1(pattern, cellName(to.row, to.col), { wrapEdges: false });
}
