import type { Formula } from "../formulas";
import { evaluate, type Inputs } from "./columns";
import type { Expression } from "./expression";
import ready from "./made/slopes.json";
import { makerFor } from "./maker";
import { fromPostfix } from "./postfix";
import type { Program } from "./program";
import { wholeText } from "./whole-text";

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
    program = { title: formula.title, steps: [], result: slopeOf(formula, symbol) };
    bySymbol.set(symbol, program);
  }
  return program;
}

/** By formula with its steps, then by symbol: the symbols it uses, and no others. */
const lines: Readonly<Record<string, Readonly<Record<string, string>>>> = ready;

function slopeOf(formula: Formula, symbol: string): Expression {
  const text = wholeText(formula);
  if (!Object.hasOwn(lines, text)) return makerFor(text).differentiate(formula, symbol);
  const line = lines[text]?.[symbol];
  return line === undefined ? { kind: "number", value: 0 } : fromPostfix(line);
}
