import { namespace, type WorksheetFunction } from "../../../functions";

/**
 * The formula of a call, without "=". Arguments are typed as a user would: a cell, a range, a
 * number or a text. Blank ones at the end are left out; a blank one between keeps its place.
 */
export function callText(entry: WorksheetFunction, typed: readonly string[]): string {
  const texts = entry.parameters.map((_, i) => argumentText(typed[i] ?? ""));
  while (texts.at(-1) === "") texts.pop();
  return `${namespace}.${entry.id}(${texts.join(",")})`;
}

/** The needed arguments that are still blank. */
export function stillNeeded(entry: WorksheetFunction, typed: readonly string[]): string[] {
  return entry.parameters
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
