import type { Expression } from "./expression";
import ready from "./made/trees.json";
import { makerFor } from "./maker";
import { fromPostfix } from "./postfix";

const lines: Readonly<Record<string, string>> = ready;

/** The tree of a formula text of ours. Texts from a workbook never come here. */
export function parseText(text: string): Expression {
  const line = Object.hasOwn(lines, text) ? lines[text] : undefined;
  return line === undefined ? makerFor(text).parse(text) : fromPostfix(line);
}
