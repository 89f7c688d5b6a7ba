import { type Expression, functionNames, type Operator, operators } from "./expression";
import { isComparison } from "./select";

/** How tightly an operator binds. A power binds more tightly than a minus sign in front. */
export const strength: Record<Operator, number> = {
  "<": 1,
  "<=": 1,
  ">": 1,
  ">=": 1,
  "+": 2,
  "-": 2,
  "*": 3,
  "/": 3,
  "^": 5,
};

const word = /\s*(\d+(?:\.\d+)?(?:e[-+]?\d+)?|[a-z_]\w*|[<>]=?|[-+*/^()?:])/iy;

/** The tree of a formula text of ours. Texts from a workbook never come here. */
export function parseText(text: string): Expression {
  const words = wordsOf(text);
  let at = 0;
  const refuse = (): never => {
    throw new Error(`a formula text may not hold "${words[at] ?? "its end"}" here: ${text}`);
  };
  const take = (wanted: string): boolean => {
    const found = words[at] === wanted;
    if (found) at++;
    return found;
  };
  const close = (tree: Expression): Expression => (take(")") ? tree : refuse());

  const choice = (): Expression => {
    const when = chain(strength["<"]);
    if (!take("?")) return when;
    const yes = choice();
    return take(":") ? { kind: "choice", when, yes, no: choice() } : refuse();
  };
  /** Operators that bind at least so tightly: from the left, powers from the right. */
  const chain = (least: number): Expression => {
    let left = operand();
    for (;;) {
      const operator = operators.find((known) => known === words[at]);
      if (!operator || strength[operator] < least) return left;
      at++;
      const own = strength[operator];
      const right = chain(operator === "^" ? own : own + 1);
      left = { kind: "binary", operator, left, right };
      // A comparison is not compared again.
      if (isComparison(operator)) return left;
    }
  };
  const operand = (): Expression => {
    if (take("-")) return { kind: "negate", of: chain(strength["^"]) };
    if (take("(")) return close(choice());
    const name = words[at] ?? "";
    if (!/^\w/.test(name)) refuse();
    at++;
    if (/^\d/.test(name)) return { kind: "number", value: Number(name) };
    if (name === "pi") return { kind: "number", value: Math.PI };
    if (!take("(")) return { kind: "symbol", name };
    const called = functionNames.find((known) => known === name);
    return called ? { kind: "call", name: called, of: close(choice()) } : refuse();
  };

  const tree = choice();
  return at === words.length ? tree : refuse();
}

function wordsOf(text: string): string[] {
  const words: string[] = [];
  word.lastIndex = 0;
  while (word.lastIndex < text.length) {
    const from = word.lastIndex;
    const [, found] = word.exec(text) ?? [];
    if (found === undefined)
      throw new Error(`a formula text may not hold "${text.slice(from)}": ${text}`);
    words.push(found);
  }
  return words;
}
