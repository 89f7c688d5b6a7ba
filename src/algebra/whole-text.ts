import type { Formula } from "../formulas";

/** A formula's steps and final text in one, which stands for all that its slopes depend on. */
export function wholeText({ steps = [], text }: Formula): string {
  return [...steps.map((step) => `${step.name} = ${step.text}; `), text].join("");
}
