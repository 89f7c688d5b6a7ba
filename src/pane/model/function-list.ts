import { InputError } from "../../cells";
/** One argument of a worksheet function. */
export interface FunctionArgument {
  readonly name: string;
  readonly description: string;
  readonly optional: boolean;
}

/** A worksheet function as its metadata describes it. */
export interface FunctionEntry {
  /** "FANROW.FLOW" */
  readonly name: string;
  readonly description: string;
  readonly helpUrl: string;
  readonly arguments: readonly FunctionArgument[];
}

/** Thrown where the list of functions cannot be used; the message says why. */
class FunctionListError extends InputError {}

/** Reads the metadata that stands beside the page. */
export function readFunctionList(json: unknown, namespace = "FANROW"): FunctionEntry[] {
  const list = record(json).functions;
  if (!Array.isArray(list)) throw new FunctionListError("the list of functions is not readable");
  return list.map((item) => {
    const entry = record(item);
    const parameters = Array.isArray(entry.parameters) ? entry.parameters : [];
    return {
      name: `${namespace}.${text(entry.name)}`,
      description: text(entry.description),
      helpUrl: text(entry.helpUrl),
      arguments: parameters.map((parameter) => {
        const { name, description, optional } = record(parameter);
        return {
          name: text(name),
          description: text(description),
          optional: optional === true,
        };
      }),
    };
  });
}

/**
 * The formula of a call, without "=". Arguments are typed as a user would: a cell, a range, a
 * number or a text. Blank ones at the end are left out; a blank one between keeps its place.
 */
export function callText(entry: FunctionEntry, typed: readonly string[]): string {
  const texts = entry.arguments.map((_, i) => argumentText(typed[i] ?? ""));
  while (texts.at(-1) === "") texts.pop();
  return `${entry.name}(${texts.join(",")})`;
}

/** The needed arguments that are still blank. */
export function stillNeeded(entry: FunctionEntry, typed: readonly string[]): string[] {
  return entry.arguments
    .filter((argument, i) => !argument.optional && (typed[i] ?? "").trim() === "")
    .map((argument) => argument.name);
}

const reference =
  /^('[^']+'|[\p{L}_][\p{L}\d_.]*)?!?\$?[A-Z]{1,3}(\$?\d+)?(:\$?[A-Z]{1,3}(\$?\d+)?)?#?$/iu;

/** References, numbers, calls and quoted texts stay as they are; words are put in quotes. */
function argumentText(typed: string): string {
  const trimmed = typed.trim().replace(/^=/, "");
  if (trimmed === "" || trimmed.startsWith('"') || /[()]/.test(trimmed)) return trimmed;
  if (/^-?\d+(\.\d+)?$/.test(trimmed)) return trimmed;
  if (reference.test(trimmed) && /[\d:!]/.test(trimmed)) return trimmed;
  return `"${trimmed.replaceAll('"', '""')}"`;
}

function record(value: unknown): Record<string, unknown> {
  return typeof value === "object" && value !== null ? (value as Record<string, unknown>) : {};
}

function text(value: unknown): string {
  return typeof value === "string" ? value : "";
}
