import { isRange, parseA1Range, toCol, tokenize } from "@borgar/fx/xlsx";
import { maxCols, maxRows } from "../cells";

/** A piece of formula text, or the part of a reference that moves with the cell. */
type Piece =
  | string
  | { readonly row: number; readonly rowFixed: boolean }
  | { readonly col: number; readonly colFixed: boolean };

/** A corner such as A1 or $B2, or half of A:B or 1:3. */
const corner = /^(\$?)([A-Za-z]{1,3})?(\$?)(\d{1,7})?$/;

function cornerPieces(text: string): Piece[] {
  const match = corner.exec(text);
  if (match === null) return [text];
  const [, firstDollar, letters, secondDollar, digits] = match;
  const pieces: Piece[] = [];
  if (letters !== undefined) {
    const range = parseA1Range(`${letters}1`);
    if (range === undefined) return [text];
    if (firstDollar === "$") pieces.push("$");
    pieces.push({ col: range.left ?? 0, colFixed: firstDollar === "$" });
  }
  if (digits !== undefined) {
    const dollar = letters === undefined ? firstDollar : secondDollar;
    if (dollar === "$") pieces.push("$");
    pieces.push({ row: Number(digits) - 1, rowFixed: dollar === "$" });
  }
  return pieces;
}

function split(formula: string): Piece[] {
  // Without merged references each corner is a token of its own, sheet names and strings apart.
  return tokenize(formula, { mergeRefs: false }).flatMap((token): Piece[] => {
    if (!isRange(token)) return [token.value];
    const [first = "", second, ...more] = token.value.split(":");
    if (second === undefined) return cornerPieces(first);
    if (more.length > 0) return [token.value];
    return [...cornerPieces(first), ":", ...cornerPieces(second)];
  });
}

/** References that leave the sheet come in again at the other side, as in Excel. */
function shifted(from: number, by: number, size: number): number {
  return (((from + by) % size) + size) % size;
}

/**
 * A formula written once, in its master cell, and shared by others: relative references move by
 * the distance from the master (ECMA-376 part 1, 18.3.1.40).
 */
export class SharedFormula {
  #pieces: Piece[] | undefined;

  constructor(
    readonly row: number,
    readonly col: number,
    readonly formula: string,
  ) {}

  at(row: number, col: number): string {
    if (row === this.row && col === this.col) return this.formula;
    this.#pieces ??= split(this.formula);
    let text = "";
    for (const piece of this.#pieces) {
      if (typeof piece === "string") text += piece;
      else if ("col" in piece) {
        text += toCol(piece.colFixed ? piece.col : shifted(piece.col, col - this.col, maxCols));
      } else {
        text += (piece.rowFixed ? piece.row : shifted(piece.row, row - this.row, maxRows)) + 1;
      }
    }
    return text;
  }
}
