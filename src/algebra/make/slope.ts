import type { ConditionalNode, FunctionNode, MathNode, SymbolNode } from "mathjs";
import type { Formula } from "../../formulas";
import type { Expression } from "../expression";
import { math, toExpression } from "./parser";

/** The partial derivative of a formula by one symbol, its steps written out in place. */
export function differentiate(formula: Formula, symbol: string): Expression {
  return slopeOf(withSteps(formula), symbol);
}

/** The formula as one tree: each step put where its name stands. */
function withSteps(formula: Formula): MathNode {
  const done = new Map<string, MathNode>();
  const put = (text: string) =>
    (math().parse(text) as MathNode).transform((node) =>
      node.type === "SymbolNode" ? (done.get((node as SymbolNode).name) ?? node) : node,
    );
  for (const step of formula.steps ?? []) done.set(step.name, put(step.text));
  return put(formula.text);
}

function slopeOf(node: MathNode, symbol: string): Expression {
  if (node.type === "ConditionalNode") {
    const { condition, trueExpr, falseExpr } = node as ConditionalNode;
    return {
      kind: "choice",
      when: toExpression(condition),
      yes: slopeOf(trueExpr, symbol),
      no: slopeOf(falseExpr, symbol),
    };
  }
  if (node.type === "FunctionNode" && (node as FunctionNode).fn.name === "floor")
    return { kind: "number", value: 0 };
  return toExpression(math().derivative(node, symbol, { simplify: false }) as MathNode);
}
