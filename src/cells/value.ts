/** An error value; the message says in words what went wrong and is shown, never calculated with. */
export interface CellError {
  readonly error: string;
  readonly message?: string;
}

/** What a cell holds; null is a blank cell or a left-out argument. Dates are serial numbers. */
export type CellValue = number | string | boolean | CellError | null;

/** The error values of the formula language, as one object each. */
export const errors = {
  value: { error: "#VALUE!" },
  na: { error: "#N/A" },
  div0: { error: "#DIV/0!" },
  num: { error: "#NUM!" },
  nul: { error: "#NULL!" },
  ref: { error: "#REF!" },
  name: { error: "#NAME?" },
  spill: { error: "#SPILL!" },
  calc: { error: "#CALC!" },
} as const satisfies Record<string, CellError>;

/** The errors that files and sheets have had from the start, in the order of their numbers from 1. */
export const numberedErrors: readonly string[] =
  "#NULL! #DIV/0! #VALUE! #REF! #NAME? #NUM! #N/A #GETTING_DATA".split(" ");

export function isCellError(value: unknown): value is CellError {
  return typeof value === "object" && value !== null && "error" in value;
}

/** Blank to a reader: nothing, or a text of nothing but spaces. */
export function isBlankCell(value: CellValue): boolean {
  return value === null || (typeof value === "string" && value.trim() === "");
}
