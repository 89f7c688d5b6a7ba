import { translateFormulaToA1, translateFormulaToR1C1 } from "@borgar/fx/xlsx";
import { cellName } from "../../cells";

interface Spot {
  readonly row: number;
  readonly col: number;
}

/** A formula with its references told from where it stands: alike for one that was copied there. */
export function pattern(formula: string, at: Spot): string {
  return translateFormulaToR1C1(formula, cellName(at.row, at.col));
}

/** What a cell holds, as typed, moved to another cell: the relative references of a formula follow. */
export function shifted(content: string, from: Spot, to: Spot): string {
  if (!content.startsWith("=") || content.length === 1) return content;
  if (from.row === to.row && from.col === to.col) return content;
  return translateFormulaToA1(pattern(content, from), cellName(to.row, to.col), {
    wrapEdges: false,
  });
}
