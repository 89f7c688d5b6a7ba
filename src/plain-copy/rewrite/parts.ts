/** Small questions about the parts of a formula. */
import { stringifyTokens, tokenTypes } from "@borgar/fx/xlsx";
import type { CellRef, Place } from "../../cells";
import { type Node, type Nodes, onlyNode, solid } from "./nodes";
import { colsOf, rowsOf } from "./places";

export function isReference(node: Node): boolean {
  if (node.kind !== "token") return false;
  const { type } = node.token;
  return (
    type === tokenTypes.REF_RANGE ||
    type === tokenTypes.REF_BEAM ||
    type === tokenTypes.REF_NAMED ||
    type === tokenTypes.REF_STRUCT ||
    type === tokenTypes.REF_TERNARY
  );
}

/** The text of an array constant, {50,80,110}. */
export function constantText(nodes: Nodes): string | undefined {
  const parts = solid(nodes);
  const tokens = parts.flatMap((node) => (node.kind === "token" ? [node.token] : []));
  if (tokens.length !== parts.length || tokens[0]?.value !== "{") return undefined;
  return tokens.findIndex(({ value }) => value === "}") === tokens.length - 1
    ? stringifyTokens(tokens)
    : undefined;
}

/** A cell of a range, single rows and columns repeating. */
export function cellOf(place: Place, { row, col }: CellRef): Place {
  const top = place.top + (rowsOf(place) === 1 ? 0 : row);
  const left = place.left + (colsOf(place) === 1 ? 0 : col);
  return { sheet: place.sheet, top, left, bottom: top, right: left };
}

/** The cell of a result that INDEX picks by numbers written in the formula. */
export function pickedBy(
  places: readonly Nodes[],
  size: { readonly rows: number; readonly cols: number },
): CellRef | undefined {
  const numbers = places.map((nodes) => {
    const node = onlyNode(nodes);
    return node?.kind === "token" && node.token.type === tokenTypes.NUMBER
      ? Number(node.token.value)
      : Number.NaN;
  });
  if (numbers.length < 1 || numbers.length > 2) return undefined;
  const [first = 1, second] = numbers;
  const isLine = second === undefined && size.rows === 1;
  const row = (isLine ? 1 : first) - 1;
  const col = (isLine ? first : (second ?? 1)) - 1;
  const isIn = (n: number, count: number) => Number.isInteger(n) && n >= 0 && n < count;
  return isIn(row, size.rows) && isIn(col, size.cols) ? { row, col } : undefined;
}
