import type { Formula } from "../formulas";
import type { Expression } from "./expression";
import { parseText } from "./parse";

/** A formula's steps and its final text as trees; the last one is the result. */
export interface Program {
  readonly title: string;
  readonly steps: readonly { readonly name: string; readonly tree: Expression }[];
  readonly result: Expression;
}

const programs = new WeakMap<Formula, Program>();

export function programOf(formula: Formula): Program {
  let program = programs.get(formula);
  if (!program) {
    program = {
      title: formula.title,
      steps: (formula.steps ?? []).map(({ name, text }) => ({ name, tree: parseText(text) })),
      result: parseText(formula.text),
    };
    programs.set(formula, program);
  }
  return program;
}
