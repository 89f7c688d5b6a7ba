import { once } from "../cells";
import type { Formula } from "../formulas";
import type { Expression } from "./expression";
import { parseText } from "./parse";

/** A formula's steps and its final text as trees; the last one is the result. */
export interface Program {
  readonly title: string;
  readonly steps: readonly { readonly name: string; readonly tree: Expression }[];
  readonly result: Expression;
}

export const programOf = once(
  ({ title, steps = [], text }: Formula): Program => ({
    title,
    steps: steps.map(({ name, text }) => ({ name, tree: parseText(text) })),
    result: parseText(text),
  }),
);
