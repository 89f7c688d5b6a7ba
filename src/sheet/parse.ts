import { type AstExpression, parse, type Token, tokenize, tokenTypes } from "@borgar/fx/xlsx";
import { InputError } from "../cells";
import { plainTokens } from "./spelling";

/** A typed formula that cannot be read; the message says where. */
export class FormulaSyntaxError extends InputError {}

/**
 * The tree of a formula, from either spelling, without the prefixes of files.
 * Throws FormulaSyntaxError.
 */
export function parseFormula(formula: string, ids: ReadonlySet<string>): AstExpression {
  const tokens = plainTokens(tokenize(formula, { withLocation: false }), ids);
  try {
    return parse(tokens, { looseRefCalls: true });
  } catch (error) {
    throw new FormulaSyntaxError(explain(formula, tokens, error));
  }
}

function explain(formula: string, tokens: readonly Token[], error: unknown): string {
  const text = formula.startsWith("=") ? formula : `=${formula}`;
  let depth = 0;
  for (const token of tokens) {
    if (token.type === tokenTypes.STRING && token.unterminated)
      return `${text}: a text starts with " but does not end; add the closing "`;
    if (token.type !== tokenTypes.OPERATOR) continue;
    if (token.value === "(") depth++;
    if (token.value === ")") depth--;
    if (depth < 0) return `${text}: a closing bracket has no opening one; remove it`;
  }
  if (depth > 0)
    return `${text}: ${depth === 1 ? "a bracket is" : `${depth} brackets are`} left open; add )`;
  const offset = (error as { sourceOffset?: number }).sourceOffset;
  const left =
    typeof offset === "number"
      ? tokens
          .map((token) => token.value)
          .join("")
          .slice(0, offset)
      : "";
  const reason = error instanceof Error ? error.message : String(error);
  return left === "" ? `${text}: ${reason}` : `${text}: ${reason}, after "${left}"`;
}
