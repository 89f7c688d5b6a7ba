import type { Expression, Operator } from "./expression";
import type { Program } from "./program";

const number = (value: number): Expression => ({ kind: "number", value });
const binary = (left: Expression, operator: Operator, right: Expression): Expression => ({
  kind: "binary",
  operator,
  left,
  right,
});
const isNumber = (tree: Expression, value: number) =>
  tree.kind === "number" && tree.value === value;
const zero = number(0);

function sum(a: Expression, b: Expression): Expression {
  if (isNumber(a, 0)) return b;
  return isNumber(b, 0) ? a : binary(a, "+", b);
}

function product(a: Expression, b: Expression): Expression {
  if (isNumber(a, 0) || isNumber(b, 0)) return zero;
  if (isNumber(a, 1)) return b;
  return isNumber(b, 1) ? a : binary(a, "*", b);
}

function difference(a: Expression, b: Expression): Expression {
  return isNumber(b, 0) ? a : sum(a, negative(b));
}

const negative = (of: Expression): Expression => (isNumber(of, 0) ? of : { kind: "negate", of });

const quotient = (a: Expression, b: Expression) => (isNumber(a, 0) ? zero : binary(a, "/", b));

/**
 * The partial derivative of a program's result by one symbol, as a tree in which the program's
 * steps keep their names. A choice is differentiated branch by branch; a rounded value has slope 0.
 */
export function derivative({ steps, result }: Program, symbol: string): Expression {
  const slopes = new Map<string, Expression>([[symbol, number(1)]]);
  const by = (tree: Expression): Expression => {
    switch (tree.kind) {
      case "number":
        return zero;
      case "symbol":
        return slopes.get(tree.name) ?? zero;
      case "negate":
        return negative(by(tree.of));
      case "choice":
        return { kind: "choice", when: tree.when, yes: by(tree.yes), no: by(tree.no) };
      case "call":
        return ofCall(tree, by(tree.of));
      case "binary":
        return ofBinary(tree, by(tree.left), by(tree.right));
    }
  };
  for (const { name, tree } of steps) slopes.set(name, by(tree));
  return by(result);
}

function ofCall(tree: Expression & { kind: "call" }, inner: Expression): Expression {
  switch (tree.name) {
    case "sqrt":
      return quotient(inner, product(number(2), tree));
    case "exp":
      return product(inner, tree);
    case "log":
      return quotient(inner, tree.of);
    case "abs":
      return quotient(product(inner, tree), tree.of);
    case "floor":
      return zero;
  }
}

function ofBinary(
  tree: Expression & { kind: "binary" },
  left: Expression,
  right: Expression,
): Expression {
  const { operator, left: a, right: b } = tree;
  switch (operator) {
    case "+":
      return sum(left, right);
    case "-":
      return difference(left, right);
    case "*":
      return sum(product(left, b), product(a, right));
    case "/": {
      if (isNumber(right, 0)) return quotient(left, b);
      const square = binary(b, "^", number(2));
      if (isNumber(left, 0)) return product(negative(a), quotient(right, square));
      return quotient(difference(product(left, b), product(a, right)), square);
    }
    case "^": {
      const less = binary(a, "^", difference(b, number(1)));
      const byPower = product(tree, product({ kind: "call", name: "log", of: a }, right));
      return sum(product(b, product(left, less)), byPower);
    }
    default:
      throw new Error("a comparison has no slope");
  }
}
