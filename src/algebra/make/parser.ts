import { createRequire } from "node:module";
import type {
  ConditionalNode,
  ConstantNode,
  FunctionNode,
  MathNode,
  OperatorNode,
  ParenthesisNode,
  SymbolNode,
} from "mathjs";
import { type Expression, functionNames, operators } from "../expression";

type Mathjs = typeof import("mathjs/number");
type Math = Pick<Mathjs, "parse" | "derivative">;

let mathjs: Math | undefined;

/** mathjs, loaded when it is first needed: that takes longer than most tests. */
export function math(): Math {
  mathjs ??= createRequire(import.meta.url)("mathjs/number") as Mathjs;
  return mathjs;
}

/** The tree of a formula text of ours. Texts from a workbook never come here. */
export function parse(text: string): Expression {
  return toExpression(math().parse(text) as MathNode);
}

export function toExpression(node: MathNode): Expression {
  switch (node.type) {
    case "ConstantNode":
      return constant(node as ConstantNode);
    case "SymbolNode": {
      const { name } = node as SymbolNode;
      return name === "pi" ? { kind: "number", value: Math.PI } : { kind: "symbol", name };
    }
    case "ParenthesisNode":
      return toExpression((node as ParenthesisNode).content);
    case "ConditionalNode": {
      const { condition, trueExpr, falseExpr } = node as ConditionalNode;
      return {
        kind: "choice",
        when: toExpression(condition),
        yes: toExpression(trueExpr),
        no: toExpression(falseExpr),
      };
    }
    case "OperatorNode":
      return operation(node as OperatorNode);
    case "FunctionNode":
      return call(node as FunctionNode);
    default:
      throw new Error(`a formula text may not hold a ${node.type}: ${node.toString()}`);
  }
}

function constant(node: ConstantNode): Expression {
  const { value } = node;
  if (typeof value !== "number" || !Number.isFinite(value))
    throw new Error(`a formula text may not hold the constant ${node.toString()}`);
  return { kind: "number", value };
}

function operation(node: OperatorNode): Expression {
  const [left, right] = node.args.map(toExpression);
  if (left && !right && String(node.op) === "-") return { kind: "negate", of: left };
  const operator = operators.find((known) => known === String(node.op));
  // "5 cm" or "2 x": a times sign that was forgotten, or a unit; neither is meant.
  if (!left || !right || !operator || node.implicit)
    throw new Error(`a formula text may not use the operator ${node.op}: ${node.toString()}`);
  return { kind: "binary", operator, left, right };
}

function call(node: FunctionNode): Expression {
  const plainCall = (node.fn as MathNode).type === "SymbolNode";
  const name = plainCall ? functionNames.find((known) => known === node.fn.name) : undefined;
  const [of, ...rest] = node.args.map(toExpression);
  if (!name || !of || rest.length > 0)
    throw new Error(`a formula text may not call ${node.toString()}`);
  return { kind: "call", name, of };
}
