/** The error codes that carry a message in Excel. */
export type ProblemCode = "#VALUE!" | "#N/A";

interface ProblemConstructor {
  new (code: ProblemCode, message: string): { readonly code: string; readonly message?: string };
}

/** Stands in for the host's error class where there is none, with the same shape. */
class PlainProblem extends Error {
  constructor(
    readonly code: ProblemCode,
    message: string,
  ) {
    super(message);
  }
}

const host = (globalThis as { CustomFunctions?: { Error?: ProblemConstructor } }).CustomFunctions;

/** An error for one cell. Thrown, it fails the whole call; in a result, it spoils that cell only. */
export function problem(code: ProblemCode, message: string): object {
  return new (host?.Error ?? PlainProblem)(code, message);
}

/** `#VALUE!`: what was given cannot be used. */
export const invalid = (message: string): object => problem("#VALUE!", message);

/** `#N/A`: what is needed is not there. */
export const missing = (message: string): object => problem("#N/A", message);

/** An error raised by the rules below, as a cell error that keeps its message. */
export function fromError(error: unknown): object {
  return invalid(error instanceof Error ? error.message : String(error));
}
