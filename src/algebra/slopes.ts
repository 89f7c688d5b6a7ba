import { kept, once } from "../cells";
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

const bySymbol = once((_: Formula) => new Map<string, Program>());

function slopeProgram(formula: Formula, symbol: string): Program {
  const whole = programOf(formula);
  return kept(bySymbol(formula), symbol, () => ({ ...whole, result: derivative(whole, symbol) }));
}
