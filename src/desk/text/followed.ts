import { parseA1Ref, stringifyA1Ref, stringifyTokens, tokenize, tokenTypes } from "@borgar/fx/xlsx";
import { sameName } from "../../cells";

/** A row put into a list or taken out of it: what stood below goes a row down, or up. */
export interface RowMove {
  readonly sheet: string;
  /** The row that is put in or taken out. */
  readonly row: number;
  readonly by: 1 | -1;
  /** Rows and columns of the list as it was. */
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
}

interface Spot {
  readonly sheet: string;
  readonly row: number;
}

/**
 * A formula that stays where it is, after rows of a list have moved; undefined where it reads none of
 * them. Outside the list its references go along. In the list, where it stands for its row whatever
 * is typed there, only what ended with the list ends with the new row.
 */
export function followed(formula: string, at: Spot, move: RowMove): string | undefined {
  const isWithin = sameName(at.sheet, move.sheet) && at.row >= move.top && at.row <= move.bottom;
  const endsWithList = () =>
    new RegExp(`:\\$?[A-Z]{1,3}\\$${move.bottom + 1}(?!\\d)`, "i").test(formula);
  if (isWithin && (move.by < 0 || !endsWithList())) return undefined;
  const text = rewritten(formula, at.sheet, move, isWithin);
  return text === formula ? undefined : text;
}

/** A formula that goes along with its row. */
export function carried(formula: string, move: RowMove): string {
  return rewritten(formula, move.sheet, move, false);
}

function rewritten(formula: string, sheet: string, move: RowMove, endsOnly: boolean): string {
  const tokens = tokenize(formula, { withLocation: false });
  for (const token of tokens)
    if (token.type === tokenTypes.REF_RANGE)
      token.value = movedRef(token.value, sheet, move, endsOnly);
  return stringifyTokens(tokens);
}

function movedRef(text: string, sheet: string, move: RowMove, endsOnly: boolean): string {
  const ref = parseA1Ref(text);
  if (!ref || !("range" in ref) || ref.workbookName) return text;
  if (!sameName(ref.sheetName || sheet, move.sheet)) return text;
  const { top, bottom, left = 0, right = Number.POSITIVE_INFINITY, $bottom } = ref.range;
  if (top == null || bottom == null) return text;
  if ((right ?? move.left) < move.left || (left ?? 0) > move.right) return text;
  const { row, by } = move;
  const isOne = top === bottom;
  const isToEnd = !isOne && bottom === move.bottom;
  if (endsOnly && !(isToEnd && $bottom)) return text;
  if (by < 0 && isOne && top === row) return "#REF!";
  const first = by > 0 ? row : row + 1;
  const moved = (each: number) => (each >= first && each <= move.bottom ? each + by : each);
  // The list keeps its last row when one is taken out; what is put in below it lengthens it.
  const end = isToEnd ? bottom + Math.max(0, by) : moved(bottom) - Number(by < 0 && bottom === row);
  return stringifyA1Ref({ ...ref, range: { ...ref.range, top: moved(top), bottom: end } });
}
