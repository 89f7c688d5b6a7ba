import { namespace, worksheetFunctions } from "../../../functions";
import type { ExampleCell as Cell, ExampleArgument } from "../../rules";

/** What a call gives: rows of cells, or the error that fails the whole call. */
export type Outcome =
  | { readonly cells: readonly (readonly unknown[])[] }
  | { readonly failure: Problem };

export interface Problem {
  readonly code: string;
  readonly message: string;
}

/** Calls a worksheet function as its host does: null for an argument that is left out. */
export function run(id: string, args: readonly ExampleArgument[]): Outcome {
  const found = worksheetFunctions.find((entry) => entry.id === id);
  if (!found) throw new Error(`the help tells of ${id}, which is no worksheet function`);
  const passed = found.parameters.map(({ dimensionality, repeating }, i) => {
    const give = (argument: ExampleArgument) => given(argument, dimensionality);
    // All that follow arrive as one list.
    return repeating ? args.slice(i).map(give) : give(args[i] ?? null);
  });
  try {
    return { cells: found.call(...passed) as unknown[][] };
  } catch (error) {
    if (isProblem(error)) return { failure: error };
    throw error;
  }
}

function given(argument: ExampleArgument, dimensionality: "scalar" | "matrix"): unknown {
  if (argument === null) return null;
  if (isColumn(argument)) return argument.map((cell) => [cell]);
  return dimensionality === "matrix" ? [[argument]] : argument;
}

/** The first error of a call. Throws where it goes well: then the help would say what is not so. */
export function problemOf(id: string, args: readonly ExampleArgument[]): Problem {
  const outcome = run(id, args);
  const found = "failure" in outcome ? outcome.failure : outcome.cells.flat().find(isProblem);
  if (!found) throw new Error(`the help says that ${formulaText(id, args)} fails, but it does not`);
  return found;
}

/** The call as typed into a cell; a column is written as an array constant. */
export function formulaText(id: string, args: readonly ExampleArgument[]): string {
  return `=${namespace}.${id}(${args.map(argumentText).join(", ")})`;
}

function argumentText(argument: ExampleArgument): string {
  if (argument === null) return "";
  return isColumn(argument) ? `{${argument.map(cellText).join("; ")}}` : cellText(argument);
}

function cellText(cell: Cell): string {
  return typeof cell === "number" ? String(cell) : `"${cell.replaceAll('"', '""')}"`;
}

function isColumn(argument: ExampleArgument): argument is readonly Cell[] {
  return Array.isArray(argument);
}

function isProblem(value: unknown): value is Problem {
  return typeof value === "object" && value !== null && "code" in value && "message" in value;
}
