import type { Argument } from "./contract/argument";
import { callRule } from "./contract/call";
import { type At, type CallWorking, explainRule } from "./contract/explain";
import type { Rule, Rules } from "./contract/rule";
import * as made from "./made/rules";

/** Every rule, by the id of its worksheet function. */
export const rules: Rules = made;

export function ruleFor(id: string): Rule | undefined {
  return Object.hasOwn(rules, id) ? rules[id] : undefined;
}

/** What a worksheet function gives for these arguments, as its host passes them. */
export function call(id: keyof typeof made, args: readonly unknown[]): unknown[][] {
  return callRule(rules[id] as Rule, args, rules);
}

/** How a call comes to its result, see `explainRule`. Throws where there is no such function. */
export function explainCall(id: string, args: readonly unknown[], at?: At): CallWorking {
  const rule = ruleFor(id);
  if (!rule) throw new Error(`there is no function ${id}`);
  return explainRule(rule, args, at);
}

/** Whether an argument has one cell a row; the others are read whole, or a row of them. */
export function isByRow({ kind }: Argument): boolean {
  return kind === "number" || kind === "name";
}
