import type { Formula } from "../formulas";
import { evaluate, type Inputs } from "./columns";
import { derivative } from "./derivative";
import { type Program, programOf } from "./program";

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
    const whole = programOf(formula);
    program = { ...whole, result: derivative(whole, symbol) };
    bySymbol.set(symbol, program);
  }
  return program;
}
