/**
 * The worksheet functions: thin shells over `src/rules`, and the metadata generated from their
 * comments. `worksheetFunctions` is what a host other than Excel calls.
 */
import type { FunctionParameter, WorksheetFunction } from "./function";
import metadata from "./functions.json";
import * as made from "./made";

export type { FunctionParameter, WorksheetFunction } from "./function";

/** The namespace that stands before each name in a formula. */
export const namespace = "FANROW";

interface MetadataParameter {
  name: string;
  description?: string;
  type?: string;
  dimensionality?: string;
  optional?: boolean;
  repeating?: boolean;
}

const implementations = made as Readonly<Record<string, (...args: never[]) => unknown>>;

/** Every function with its metadata, in the order of functions.json. */
export const worksheetFunctions: readonly WorksheetFunction[] = metadata.functions.map((entry) => {
  const call = implementations[entry.id];
  if (!call) throw new Error(`functions.json names ${entry.id}, which has no code`);
  return {
    id: entry.id,
    description: entry.description,
    parameters: (entry.parameters as MetadataParameter[]).map(toParameter),
    call: call as (...args: unknown[]) => unknown,
  };
});

function toParameter(entry: MetadataParameter): FunctionParameter {
  return {
    name: entry.name,
    description: entry.description ?? "",
    type: (entry.type ?? "any") as FunctionParameter["type"],
    dimensionality: entry.dimensionality === "matrix" ? "matrix" : "scalar",
    optional: entry.optional === true,
    repeating: entry.repeating === true,
  };
}
