import type { ConditionalNode, FunctionNode, MathNode, SymbolNode } from "mathjs";
import type { Formula } from "../formulas";
import { evaluate, type Inputs } from "./columns";
import type { Expression } from "./expression";
import { math, toExpression } from "./parse";
import type { Program } from "./program";

/**
 * The slopes reader: the partial derivative of a formula by one of its symbols, over rows.
 *
 * Derivatives are symbolic. A formula with a choice is differentiated branch by branch, and a
 * rounded one has slope 0 away from its steps; both may stand only outermost in the text.
 */
export function slopes(
  formula: Formula,
  symbol: string,
  inputs: Inputs,
  length: number,
): Float64Array {
  return evaluate(slopeProgram(formula, symbol), inputs, length);
}

const cache = new WeakMap<Formula, Map<string, Program>>();

function slopeProgram(formula: Formula, symbol: string): Program {
  const bySymbol = cache.get(formula) ?? new Map<string, Program>();
  cache.set(formula, bySymbol);
  let program = bySymbol.get(symbol);
  if (!program) {
    const whole = withSteps(formula);
    program = { title: formula.title, steps: [], result: slopeOf(whole, symbol) };
    bySymbol.set(symbol, program);
  }
  return program;
}

/** The formula as one tree: each step put where its name stands. */
function withSteps(formula: Formula): MathNode {
  const done = new Map<string, MathNode>();
  const put = (text: string) =>
    (math.parse(text) as MathNode).transform((node) =>
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
  return toExpression(math.derivative(node, symbol, { simplify: false }) as MathNode);
}
