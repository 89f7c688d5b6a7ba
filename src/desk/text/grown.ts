import { parseA1Ref, stringifyA1Ref, stringifyTokens, tokenize, tokenTypes } from "@borgar/fx/xlsx";

/** The last row of a list, below which a row is put in. */
export interface ListEnd {
  readonly sheet: string;
  readonly row: number;
}

/**
 * A formula whose ranges that end with a list's last row end one row further down; undefined where it
 * has none. `at` is where it stands: a range that goes along with the rows of the list stays as it is.
 */
export function grown(formula: string, at: ListEnd, end: ListEnd): string | undefined {
  if (!new RegExp(`:\\$?[A-Z]{1,3}\\$?${end.row + 1}(?!\\d)`, "i").test(formula)) return undefined;
  const tokens = tokenize(formula, { withLocation: false });
  for (const token of tokens)
    if (token.type === tokenTypes.REF_RANGE) token.value = grownRange(token.value, at, end);
  const text = stringifyTokens(tokens);
  return text === formula ? undefined : text;
}

function grownRange(text: string, at: ListEnd, end: ListEnd): string {
  const ref = parseA1Ref(text);
  if (!ref || !("range" in ref) || ref.workbookName) return text;
  if (!isSame(ref.sheetName || at.sheet, end.sheet)) return text;
  const { range } = ref;
  const top = range.top ?? end.row;
  if (range.bottom !== end.row || top >= end.row) return text;
  const isWithin = isSame(at.sheet, end.sheet) && at.row >= top && at.row <= end.row;
  if (isWithin && !range.$bottom) return text;
  return stringifyA1Ref({ ...ref, range: { ...range, bottom: end.row + 1 } });
}

const isSame = (a: string, b: string) => a.toLowerCase() === b.toLowerCase();
