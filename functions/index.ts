/**
 * The worksheet functions: thin shells over `src/rules`, from whose comments Excel's metadata is made.
 * `worksheetFunctions` is what a host other than Excel calls.
 */
import { type Argument, rules } from "../src/rules";
import type { WorksheetFunction } from "./function";
import * as made from "./made";

export type { FunctionParameter, WorksheetFunction } from "./function";

/** The namespace that stands before each name in a formula. */
export const namespace = "FANROW";

/** The help page of a function in the site, as its @helpurl names it. */
export const helpFile = (id: string): string =>
  `help/${id.toLowerCase().replaceAll("_", "-")}.html`;

/** The function's comment, then those of its parameters: put here by what bundles the code. */
declare const descriptionsOfFunctions: Readonly<Record<string, readonly string[]>>;

const descriptions = typeof descriptionsOfFunctions === "undefined" ? {} : descriptionsOfFunctions;

const implementations = made as Readonly<Record<string, (...args: never[]) => unknown>>;

/** Every function, as its rule has it. */
export const worksheetFunctions: readonly WorksheetFunction[] = Object.values(rules).map((rule) => {
  const call = implementations[rule.id];
  if (!call) throw new Error(`${rule.id} has a rule and no shell`);
  const [description = "", ...ofParameters] = descriptions[rule.id] ?? [];
  return {
    id: rule.id,
    description,
    parameters: Object.entries(rule.arguments).map(([name, argument], i) => ({
      name,
      description: ofParameters[i] ?? "",
      dimensionality: isScalar(argument) ? "scalar" : "matrix",
      optional: argument.optional === true,
      repeating: argument.kind === "rest",
    })),
    call: call as (...args: unknown[]) => unknown,
  };
});

function isScalar(argument: Argument): boolean {
  return argument.kind === "units" || (argument.kind === "word" && argument.isRange !== true);
}
