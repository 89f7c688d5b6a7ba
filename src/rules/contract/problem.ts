import { InputError, onceForText } from "../../cells";

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

/** Errors told at most: a column tells the same ones over and over, and each costs a look at the stack. */
const mostKept = 10_000;
const told = onceForText(mostKept, (text) => {
  const at = text.indexOf(" ");
  return new (host?.Error ?? PlainProblem)(text.slice(0, at), text.slice(at + 1));
});

/** An error for one cell. Thrown, it fails the whole call; in a result, it spoils that cell only. */
export function problem(code: string, message: string): object {
  if (known.includes(code)) return told(`${code} ${message}`);
  return told(`#N/A ${message === "" ? code : `${code} ${message}`}`);
}

/** `#VALUE!`: what was given cannot be used. */
export const invalid = (message: string): object => problem("#VALUE!", message);

/** A user's mistake as a cell error that keeps its message; any other error is thrown on. */
export function fromError(error: unknown): object {
  if (!(error instanceof InputError)) throw error;
  return problem(error.reason === "blank" ? "#N/A" : "#VALUE!", error.message);
}
