import { type AstExpression, parse, tokenize } from "@borgar/fx/xlsx";
import { columnIndex, once } from "../../cells";
import type { Shape } from "../cells/shapes";

export type Node = AstExpression;

/** A reference as it stands in a copied formula: fixed, or a distance from the formula's own cell. */
export interface Ref {
  /** Undefined for the sheet of the formula. */
  readonly sheet: string | undefined;
  readonly row: number;
  readonly col: number;
  readonly fixedRow: boolean;
  readonly fixedCol: boolean;
  /** How many more rows and columns it covers. */
  readonly rows: number;
  readonly cols: number;
}

/** The tree of a formula, or null where it cannot be parsed. Parsed once for all copies. */
export const treeOf = once(({ formula }: Shape): Node | null => {
  try {
    return parse(tokenize(`=${formula}`, { withLocation: false }), { looseRefCalls: true }) as Node;
  } catch {
    return null;
  }
});

const cellText =
  /^(?:(?:'((?:[^']|'')+)'|([^'!]+))!)?(\$?)([A-Z]{1,3})(\$?)(\d+)(?::(\$?)([A-Z]{1,3})(\$?)(\d+))?$/i;

/** Reads "Boxes!$A$2:$B$5" as met in a shape; undefined for names, whole columns and the like. */
export function refOf(text: string, shape: Shape): Ref | undefined {
  const found = cellText.exec(text);
  if (!found) return undefined;
  const sheet = found[1]?.replaceAll("''", "'") ?? found[2];
  const [fixedCol, fixedRow] = [found[3] === "$", found[5] === "$"];
  const [col, row] = [columnIndex(found[4]!), Number(found[6]) - 1];
  return {
    sheet,
    fixedRow,
    fixedCol,
    row: fixedRow ? row : row - shape.row,
    col: fixedCol ? col : col - shape.col,
    rows: found[10] ? Number(found[10]) - 1 - row : 0,
    cols: found[8] ? columnIndex(found[8]) - col : 0,
  };
}

/** The name of a called function without the prefixes of files; "" for any other node. */
export function calledName(node: Node): string {
  if (node.type !== "CallExpression") return "";
  // A call of what another call gives has no name of its own.
  return (node.callee.name ?? "").toUpperCase().replace(/^(_XLFN\.|_XLWS\.|_XLUDF_|_XLDUDF_)+/, "");
}

/** "Opening" for `tblFans[[#This Row],[Opening]]`, `tblFans[@Opening]` and `[@Opening]`. */
export function tableColumn(text: string): { table: string; column: string } | undefined {
  const found = /^([\p{L}\p{N}_.\\]*)\[(?:\[#This Row\],|@)\s*\[?([^\]]+)\]?\]$/iu.exec(text);
  return found ? { table: found[1]!, column: found[2]!.replace(/'(.)/g, "$1") } : undefined;
}

/** Visits a node and all beneath it. */
export function walk(node: Node, see: (node: Node) => void): void {
  see(node);
  if ("arguments" in node) for (const part of node.arguments) if (part) walk(part as Node, see);
}
