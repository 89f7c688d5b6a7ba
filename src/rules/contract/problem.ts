import { InputError } from "../../cells";

interface ProblemConstructor {
  new (code: string, message: string): { readonly code: string; readonly message?: string };
}

/** Stands in for the host's error class where there is none, with the same shape. */
class PlainProblem extends Error {
  readonly code: string;

  constructor(code: string, message: string) {
    const { stackTraceLimit } = Error;
    // It tells of a cell, never of a place in the code; a column may hold thousands.
    Error.stackTraceLimit = 0;
    super(message);
    Error.stackTraceLimit = stackTraceLimit;
    this.code = code;
  }
}

const host = (globalThis as { CustomFunctions?: { Error?: ProblemConstructor } }).CustomFunctions;

/** The errors that a function may give. Only `#VALUE!` and `#N/A` show their message in Excel. */
const known = ["#VALUE!", "#N/A", "#DIV/0!", "#NUM!", "#NAME?", "#REF!", "#NULL!"];

/** An error for one cell. Thrown, it fails the whole call; in a result, it spoils that cell only. */
export function problem(code: string, message: string): object {
  return known.includes(code)
    ? new (host?.Error ?? PlainProblem)(code, message)
    : new (host?.Error ?? PlainProblem)("#N/A", message === "" ? code : `${code} ${message}`);
}

/** `#VALUE!`: what was given cannot be used. */
export const invalid = (message: string): object => problem("#VALUE!", message);

/** A user's mistake as a cell error that keeps its message; any other error is thrown on. */
export function fromError(error: unknown): object {
  if (!(error instanceof InputError)) throw error;
  return problem(error.reason === "blank" ? "#N/A" : "#VALUE!", error.message);
}
