/**
 * The two spellings of a formula: as a user types it (FANROW.FLOW, XLOOKUP, A1#, @A1:A3) and as a
 * file stores it (_xldudf_FANROW_FLOW, _xlfn.XLOOKUP, ANCHORARRAY, SINGLE).
 */
import { stringifyTokens, type Token, tokenize, tokenTypes } from "@borgar/fx/xlsx";
import type { WorksheetFunction } from "../../functions";

const typedPrefix = "FANROW.";
const storedPrefix = "_XLDUDF_FANROW_";

/** The id of one of our functions from any spelling of its name, or undefined. */
function ownId(name: string, ids: ReadonlySet<string>): string | undefined {
  const upper = name.toUpperCase();
  const prefix = [storedPrefix, typedPrefix].find((each) => upper.startsWith(each));
  if (prefix === undefined) return undefined;
  const id = upper.slice(prefix.length);
  return ids.has(id) ? id : undefined;
}

/** Whether a name is spelled as one of ours, known or not. */
export function looksOwn(name: string): boolean {
  const upper = name.toUpperCase();
  return upper.startsWith(storedPrefix) || upper.startsWith(typedPrefix);
}

function idsOf(functions: readonly WorksheetFunction[]): Set<string> {
  return new Set(functions.map((each) => each.id.toUpperCase()));
}

const future = new Set(
  (
    "ANCHORARRAY SINGLE LET LAMBDA XLOOKUP XMATCH UNIQUE SORTBY SEQUENCE RANDARRAY CONCAT TEXTJOIN " +
    "IFS SWITCH MAXIFS MINIFS IFNA DAYS XOR ISFORMULA FORMULATEXT NUMBERVALUE UNICHAR UNICODE " +
    "STDEV.S STDEV.P VAR.S VAR.P RANK.EQ RANK.AVG PERCENTILE.INC PERCENTILE.EXC QUARTILE.INC " +
    "QUARTILE.EXC MODE.SNGL NORM.DIST NORM.INV NORM.S.DIST NORM.S.INV T.DIST T.DIST.2T T.DIST.RT " +
    "T.INV T.INV.2T CHISQ.DIST CHISQ.INV F.DIST F.INV CONFIDENCE.NORM CONFIDENCE.T COVARIANCE.S " +
    "COVARIANCE.P FORECAST.LINEAR CEILING.MATH FLOOR.MATH VSTACK HSTACK TAKE DROP CHOOSECOLS " +
    "CHOOSEROWS TOCOL TOROW WRAPROWS WRAPCOLS EXPAND TEXTBEFORE TEXTAFTER TEXTSPLIT ISOWEEKNUM"
  ).split(" "),
);
const worksheetFuture = new Set(["FILTER", "SORT"]);

const isOpen = (token: Token | undefined) => token?.value === "(";
const operator = (value: string): Token => ({ type: tokenTypes.OPERATOR, value });
const call = (name: string): Token[] => [{ type: tokenTypes.FUNCTION, value: name }, operator("(")];

/**
 * The formula as a file stores it, without a leading "=". `table` names the table the formula
 * stands in, for references such as [@Column].
 */
export function inStoredForm(
  formula: string,
  functions: readonly WorksheetFunction[],
  table = "",
): string {
  const ids = idsOf(functions);
  const tokens = tokenize(formula.replace(/^=/, ""), { withLocation: false });
  const locals = letNames(tokens);
  const out: Token[] = [];
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i]!;
    if (token.type === tokenTypes.FUNCTION)
      out.push({ ...token, value: storedName(token.value, ids) });
    else if (token.type === tokenTypes.REF_NAMED && locals.has(token.value.toLowerCase()))
      out.push({ ...token, value: `_xlpm.${token.value}` });
    else if (token.type === tokenTypes.REF_STRUCT)
      out.push({ ...token, value: storedTable(token.value, table) });
    else if (token.value === "#" && token.type === tokenTypes.OPERATOR && out.length > 0)
      out.push(...call("_xlfn.ANCHORARRAY"), out.pop()!, operator(")"));
    else out.push(token);
  }
  return stringifyTokens(singled(out));
}

/** The formula as a user types it, without a leading "=". */
export function inTypedForm(formula: string, functions: readonly WorksheetFunction[]): string {
  const ids = idsOf(functions);
  const tokens = plainTokens(tokenize(formula.replace(/^=/, ""), { withLocation: false }), ids);
  const out: Token[] = [];
  /** What to write in place of the closing bracket of each open one. */
  const closing: string[] = [];
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i]!;
    const unwraps = token.type === tokenTypes.FUNCTION && isOpen(tokens[i + 1]);
    if (unwraps && token.value === "ANCHORARRAY") {
      closing.push("#");
      i++;
    } else if (unwraps && token.value === "SINGLE") {
      closing.push("");
      out.push(operator("@"));
      i++;
    } else if (isOpen(token)) {
      closing.push(")");
      out.push(token);
    } else if (token.value === ")" && token.type === tokenTypes.OPERATOR)
      out.push(operator(closing.pop() ?? ")"));
    else out.push(token);
  }
  return stringifyTokens(out.filter((token) => token.value !== ""));
}

/** Tokens without the prefixes and workbook indexes that only files carry. */
export function plainTokens(tokens: readonly Token[], ids: ReadonlySet<string>): Token[] {
  const out: Token[] = [];
  for (const token of tokens) {
    if (token.type === tokenTypes.FUNCTION) {
      const name = token.value.replace(/^(_xlfn\.|_xlws\.)+/i, "");
      const id = ownId(name, ids);
      // An index before one of our functions names the file it was once loaded from.
      if (
        id !== undefined &&
        out.at(-1)?.value === "!" &&
        /^\[\d+\]$/.test(out.at(-2)?.value ?? "")
      )
        out.length -= 2;
      out.push({ ...token, value: id === undefined ? name : typedPrefix + id });
    } else if (token.type === tokenTypes.REF_NAMED)
      out.push({ ...token, value: token.value.replace(/^_xlpm\./i, "") });
    else if (token.type === tokenTypes.ERROR && out.at(-1)?.value === "!") {
      out.length -= 2;
      out.push(token);
    } else out.push(token);
  }
  return out;
}

function storedName(name: string, ids: ReadonlySet<string>): string {
  const id = ownId(name, ids);
  if (id !== undefined) return `_xldudf_FANROW_${id}`;
  const upper = name.toUpperCase();
  if (worksheetFuture.has(upper)) return `_xlfn._xlws.${upper}`;
  return future.has(upper) ? `_xlfn.${upper}` : name;
}

/** T[@Col] is stored as T[[#This Row],[Col]]. */
function storedTable(written: string, own: string): string {
  const text = written.startsWith("[") ? own + written : written;
  const match = /^([^[]*)\[@(\[.*\]|[^[\]]*)\]$/s.exec(text);
  if (!match) return text;
  const [, table = "", columns = ""] = match;
  if (columns === "") return `${table}[#This Row]`;
  return `${table}[[#This Row],${columns.startsWith("[") ? columns : `[${columns}]`}]`;
}

/** Names that a LET or LAMBDA of the formula declares. */
function letNames(tokens: readonly Token[]): Set<string> {
  const names = new Set<string>();
  const solid = tokens.filter((token) => token.type !== tokenTypes.WHITESPACE);
  const stack: { isLet: boolean }[] = [];
  solid.forEach((token, i) => {
    const before = solid[i - 1];
    if (isOpen(token))
      stack.push({
        isLet:
          before?.type === tokenTypes.FUNCTION && /^(_xlfn\.)?(LET|LAMBDA)$/i.test(before.value),
      });
    else if (token.value === ")" && token.type === tokenTypes.OPERATOR) stack.pop();
    const declares = before?.value === "(" || before?.value === ",";
    const isDeclared = declares && solid[i + 1]?.value === "," && stack.at(-1)?.isLet === true;
    if (token.type === tokenTypes.REF_NAMED && isDeclared) names.add(token.value.toLowerCase());
  });
  return names;
}

/** Writes the @ before a reference or call as SINGLE( … ). */
function singled(tokens: readonly Token[]): Token[] {
  const out: Token[] = [];
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i]!;
    if (token.value !== "@" || token.type !== tokenTypes.OPERATOR) {
      out.push(token);
      continue;
    }
    const last = operandEnd(tokens, i + 1);
    out.push(...call("_xlfn.SINGLE"), ...singled(tokens.slice(i + 1, last + 1)), operator(")"));
    i = last;
  }
  return out;
}

function operandEnd(tokens: readonly Token[], start: number): number {
  const first = tokens[start];
  if (first?.type !== tokenTypes.FUNCTION && !isOpen(first)) return start;
  let depth = 0;
  for (let i = start; i < tokens.length; i++) {
    if (isOpen(tokens[i])) depth++;
    else if (tokens[i]!.value === ")" && --depth === 0) return i;
  }
  return tokens.length - 1;
}
