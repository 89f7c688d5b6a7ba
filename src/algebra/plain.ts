import { formulaNumber } from "../cells";
import type { Formula } from "../formulas";
import type { Expression, FunctionName } from "./expression";
import { strength } from "./parse";
import { programOf } from "./program";

/**
 * The plain reader: the formula as native spreadsheet text, without "=".
 *
 * `references` gives, for each symbol, what to write for it: a cell, a name or a number. Steps are
 * written out in place, so that the result needs no helper cells and no LET.
 */
export function plain(formula: Formula, references: Readonly<Record<string, string>>): string {
  const program = programOf(formula);
  const known = new Map(Object.entries(references));
  for (const { name, tree } of program.steps) known.set(name, `(${write(tree, known, 0)})`);
  return write(program.result, known, 0);
}

const natives: Record<FunctionName, string> = {
  sqrt: "SQRT",
  exp: "EXP",
  log: "LN",
  abs: "ABS",
  floor: "INT",
};

function write(tree: Expression, known: ReadonlyMap<string, string>, outer: number): string {
  switch (tree.kind) {
    case "number":
      return tree.value === Math.PI ? "PI()" : formulaNumber(tree.value);
    case "symbol": {
      const reference = known.get(tree.name);
      if (reference === undefined) throw new Error(`no reference for the symbol ${tree.name}`);
      return reference;
    }
    // A spreadsheet reads -2^2 as 4: a negation always carries its own parentheses.
    case "negate":
      return `(-${write(tree.of, known, strength["^"] + 1)})`;
    case "call":
      return `${natives[tree.name]}(${write(tree.of, known, 0)})`;
    case "choice":
      return `IF(${write(tree.when, known, 0)},${write(tree.yes, known, 0)},${write(tree.no, known, 0)})`;
    case "binary": {
      const own = strength[tree.operator];
      // Powers run left to right in a spreadsheet and right to left on paper: both sides closed.
      const left = write(tree.left, known, tree.operator === "^" ? own + 1 : own);
      const text = `${left}${tree.operator}${write(tree.right, known, own + 1)}`;
      return own < outer ? `(${text})` : text;
    }
  }
}
