import { type Expression, functionNames, operators } from "./expression";

/**
 * A tree as one line of words, operands before what is done to them: `K A * P sqrt *`. Compact,
 * read in one pass, and legible where a change of a formula is reviewed.
 */
export function toPostfix(tree: Expression): string {
  switch (tree.kind) {
    case "number":
      return tree.value === Math.PI ? pi : String(tree.value);
    case "symbol":
      if (isTaken(tree.name)) throw new Error(`no symbol can be called ${tree.name}`);
      return tree.name;
    case "negate":
      return `${toPostfix(tree.of)} ${negation}`;
    case "call":
      return `${toPostfix(tree.of)} ${tree.name}`;
    case "binary":
      return `${toPostfix(tree.left)} ${toPostfix(tree.right)} ${tree.operator}`;
    case "choice":
      return `${toPostfix(tree.when)} ${toPostfix(tree.yes)} ${toPostfix(tree.no)} ${either}`;
  }
}

/** The tree of a line that `toPostfix` wrote. */
export function fromPostfix(line: string): Expression {
  const trees: Expression[] = [];
  const last = () => {
    const tree = trees.pop();
    if (!tree) throw new Error(`not a formula's tree: ${line}`);
    return tree;
  };
  for (const word of line === "" ? [] : line.split(" ")) trees.push(read(word, last));
  const tree = last();
  if (trees.length > 0) throw new Error(`not a formula's tree: ${line}`);
  return tree;
}

const pi = "pi";
const negation = "neg";
const either = "?:";

function read(word: string, last: () => Expression): Expression {
  const operator = operators.find((known) => known === word);
  if (operator) {
    const right = last();
    return { kind: "binary", operator, left: last(), right };
  }
  const name = functionNames.find((known) => known === word);
  if (name) return { kind: "call", name, of: last() };
  if (word === negation) return { kind: "negate", of: last() };
  if (word === either) {
    const no = last();
    const yes = last();
    return { kind: "choice", when: last(), yes, no };
  }
  if (word === pi) return { kind: "number", value: Math.PI };
  // A number begins with a digit or its sign; everything else here is a name.
  return /^-?\d/.test(word)
    ? { kind: "number", value: Number(word) }
    : { kind: "symbol", name: word };
}

function isTaken(name: string): boolean {
  return name === negation || name === pi || functionNames.some((known) => known === name);
}
