import type { Formula } from "../formulas";
import type { Expression, Operator } from "./expression";
import { type Program, programOf } from "./program";

type Row = Record<string, number>;

/** One value of a formula: the columns reader for a single row, without its buffers. */
export function oneValue(formula: Formula, inputs: Readonly<Row>): number {
  return oneValueOf(programOf(formula), inputs);
}

export function oneValueOf(program: Program, inputs: Readonly<Row>): number {
  const row = program.steps.length > 0 ? { ...inputs } : inputs;
  for (const { name, tree } of program.steps) (row as Row)[name] = walk(tree, row);
  return walk(program.result, row);
}

function walk(tree: Expression, row: Readonly<Row>): number {
  switch (tree.kind) {
    case "number":
      return tree.value;
    case "symbol": {
      const value = row[tree.name];
      if (value === undefined) throw new Error(`no input for the symbol ${tree.name}`);
      return value;
    }
    case "negate":
      return -walk(tree.of, row);
    case "call":
      return Math[tree.name](walk(tree.of, row));
    case "binary":
      return apply(tree.operator, walk(tree.left, row), walk(tree.right, row));
    case "choice": {
      const when = walk(tree.when, row);
      if (Number.isNaN(when)) return Number.NaN;
      return walk(when ? tree.yes : tree.no, row);
    }
  }
}

function apply(operator: Operator, a: number, b: number): number {
  switch (operator) {
    case "+":
      return a + b;
    case "-":
      return a - b;
    case "*":
      return a * b;
    case "/":
      return a / b;
    case "^":
      return a ** b;
    case "<":
      return a < b ? 1 : a >= b ? 0 : Number.NaN;
    case "<=":
      return a <= b ? 1 : a > b ? 0 : Number.NaN;
    case ">":
      return apply("<", b, a);
    case ">=":
      return apply("<=", b, a);
  }
}
