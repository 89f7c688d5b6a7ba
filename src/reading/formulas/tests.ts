import { kept, once } from "../../cells";
import type { Cells } from "../cells/cells";
import type { Shape } from "../cells/shapes";
import type { Book } from "./book";
import { linesIn, type Product, productOf, type Scope } from "./law";
import { calledName, type Node, treeOf, walk } from "./tree";

/** Two amounts of a record compared, with the texts that either outcome gives. */
export interface Comparison {
  readonly operator: string;
  readonly left: readonly number[];
  readonly right: readonly number[];
  /** The other side, where it is a number of its own. */
  readonly number: number | undefined;
  readonly yes: string | undefined;
  readonly no: string | undefined;
}

/** What the tests in a formula tell of the lines that it names. */
export interface FormulaTests {
  readonly comparisons: readonly Comparison[];
  /** Lines whose words are compared: IF(B4="Kitchen",…). */
  readonly words: ReadonlyMap<number, ReadonlySet<string>>;
  /** Texts and numbers that the formula gives itself. */
  readonly texts: readonly string[];
  readonly numbers: readonly number[];
  /** Lines looked for in a list of another place. */
  readonly keys: readonly number[];
  /** Lines of the record that the formula names at all. */
  readonly lines: ReadonlySet<number>;
  readonly product: Product | undefined;
  /** It adds up or counts along a column: a total row. */
  readonly sums: boolean;
}

const order = new Set(["<", ">", "<=", ">="]);
const testsIn = once((_: Cells) => new Map<number, FormulaTests>());

/** Takes the formula of a cell apart, once for all its copies in the same line. */
export function testsOf(
  shape: Shape,
  cells: Cells,
  row: number,
  col: number,
  book: Book,
): FormulaTests {
  const at = cells.place(row, col);
  const key = shape.id * 2 ** 21 + col;
  return kept(testsIn(cells), key, () => takeApart({ shape, at, cells, book }));
}

function takeApart(scope: Scope): FormulaTests {
  const comparisons: Comparison[] = [];
  const words = new Map<number, Set<string>>();
  const texts: string[] = [];
  const numbers: number[] = [];
  const keys = new Set<number>();
  let sums = false;
  const tree = treeOf(scope.shape);
  const outcomes = (node: Node | null | undefined): string | undefined =>
    node?.type === "Literal" && typeof node.value === "string" && node.value !== ""
      ? node.value
      : undefined;
  const compare = (node: Node, yes: string | undefined, no: string | undefined) => {
    if (node.type === "CallExpression" && /^(AND|OR|NOT)$/.test(calledName(node))) {
      for (const part of node.arguments as Node[]) if (part) compare(part, yes, no);
      return;
    }
    if (node.type !== "BinaryExpression") return;
    const [left, right] = node.arguments as [Node, Node];
    if (order.has(node.operator)) {
      const [a, b] = [linesIn(left, scope), linesIn(right, scope)];
      const literal = [left, right].find(
        (side) => side.type === "Literal" && typeof side.value === "number",
      );
      const number = literal?.type === "Literal" ? (literal.value as number) : undefined;
      if (a.length || b.length)
        comparisons.push({ operator: node.operator, left: a, right: b, number, yes, no });
    }
    if (node.operator !== "=" && node.operator !== "<>") return;
    for (const [side, other] of [
      [left, right],
      [right, left],
    ] as const) {
      const word = outcomes(other);
      if (word === undefined) continue;
      for (const line of linesIn(side, scope))
        words.set(line, (words.get(line) ?? new Set()).add(word));
    }
  };
  if (tree)
    walk(tree, (node) => {
      const name = calledName(node);
      if (node.type !== "CallExpression") {
        if (node.type === "BinaryExpression" && node === tree) compare(node, undefined, undefined);
        return;
      }
      const args = node.arguments as (Node | null)[];
      if (name === "IF" || name === "IFS") {
        for (let at = 0; at + 1 < args.length; at += name === "IF" ? args.length : 2) {
          const [test, yes, no] = [
            args[at],
            args[at + 1],
            name === "IF" ? args[at + 2] : undefined,
          ];
          if (test) compare(test, outcomes(yes), no ? outcomes(no) : undefined);
          for (const part of [yes, no]) {
            if (part?.type !== "Literal") continue;
            if (typeof part.value === "string" && part.value !== "") texts.push(part.value);
            if (typeof part.value === "number") numbers.push(part.value);
          }
        }
      }
      if (/^FANROW[._]VERDICT$/.test(name) && args[0] && args[1])
        comparisons.push({
          operator: ">=",
          left: linesIn(args[0], scope),
          right: linesIn(args[1], scope),
          number: undefined,
          yes: "pass",
          no: "short",
        });
      if (/^(VLOOKUP|HLOOKUP|XLOOKUP|MATCH|LOOKUP|SWITCH|CHOOSE)$/.test(name) && args[0])
        for (const line of linesIn(args[0], scope)) keys.add(line);
      if (
        /^(SUM|AVERAGE|COUNT|COUNTA|COUNTIF|SUBTOTAL|AVERAGEIF|SUMIF|MIN|MAX)/.test(name) &&
        node === tree &&
        args.every((part) => !part || linesIn(part, scope).length === 0)
      )
        sums = true;
    });
  const lines = new Set(tree ? allLines(tree, scope) : []);
  return {
    comparisons,
    words,
    texts,
    numbers,
    keys: [...keys],
    lines,
    sums,
    product: productOf(scope),
  };
}

function allLines(tree: Node, scope: Scope): number[] {
  const lines: number[] = [];
  walk(tree, (node) => {
    if (node.type === "ReferenceIdentifier") lines.push(...linesIn(node, scope));
  });
  return lines;
}
