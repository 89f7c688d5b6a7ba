import type { CellValue } from "../../cells";

type ErrorValue = Extract<CellValue, { readonly error: string }>;

/** What is wrong with a cell in error: its own message, else what the error means at all. */
export function meaningOf({ error, message }: ErrorValue): string {
  return message ?? meanings[error] ?? "";
}

const meanings: Readonly<Record<string, string>> = {
  "#DIV/0!": "The formula divides by zero.",
  "#REF!": "The formula reads a cell that is no longer there.",
  "#NAME?": "The formula uses a name that is not known.",
  "#NUM!": "The result is not a number the sheet can hold.",
  "#NULL!": "The formula names ranges that have no cell in common.",
  "#VALUE!": "The formula was given something it cannot use.",
  "#N/A": "The formula lacks a value it needs.",
  "#SPILL!": "The cells the result would fill are not empty.",
};
