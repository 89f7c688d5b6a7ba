/**
 * What a user gave cannot be worked with, or his program refuses it; the message says what and how
 * to mend it. Every other error is a fault of ours and is thrown on, never told as the user's.
 */
export class InputError extends Error {
  constructor(
    message: string,
    /** "blank": nothing was given yet. "unusable": what was given will not do. */
    readonly reason: "blank" | "unusable" = "unusable",
    /** The argument, field or cell that it is about, where it is one. */
    readonly about?: string,
  ) {
    // A sheet may be full of them, and none is looked for in the program: no stack is gathered.
    const { stackTraceLimit } = Error;
    Error.stackTraceLimit = 0;
    super(message);
    Error.stackTraceLimit = stackTraceLimit;
  }
}
