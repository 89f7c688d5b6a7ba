/** A formula's syntax tree, reduced to what the formula texts use. */
export type Expression =
  | { readonly kind: "number"; readonly value: number }
  | { readonly kind: "symbol"; readonly name: string }
  | { readonly kind: "negate"; readonly of: Expression }
  | {
      readonly kind: "binary";
      readonly operator: Operator;
      readonly left: Expression;
      readonly right: Expression;
    }
  | { readonly kind: "call"; readonly name: FunctionName; readonly of: Expression }
  | {
      readonly kind: "choice";
      readonly when: Expression;
      readonly yes: Expression;
      readonly no: Expression;
    };

export const operators = ["+", "-", "*", "/", "^", "<", "<=", ">", ">="] as const;
export type Operator = (typeof operators)[number];

export const functionNames = ["sqrt", "exp", "log", "abs", "floor"] as const;
export type FunctionName = (typeof functionNames)[number];

/** The names of all symbols in an expression; `pi` is a number, not a symbol. */
export function symbolsOf(expression: Expression, found = new Set<string>()): Set<string> {
  switch (expression.kind) {
    case "number":
      break;
    case "symbol":
      found.add(expression.name);
      break;
    case "negate":
    case "call":
      symbolsOf(expression.of, found);
      break;
    case "binary":
      symbolsOf(expression.left, found);
      symbolsOf(expression.right, found);
      break;
    case "choice":
      symbolsOf(expression.when, found);
      symbolsOf(expression.yes, found);
      symbolsOf(expression.no, found);
  }
  return found;
}
