import { InputError } from "./input-error";

/** What to tell of an error: what a user did in its own words, a fault of ours as that. */
export function toldOf(error: unknown): string {
  if (error instanceof InputError) return error.message;
  const what = error instanceof Error ? error.message : String(error);
  return /dynamically imported module|importing a module script|error loading dynamic/i.test(what)
    ? "A part of the program could not be loaded: see that the connection is there, then try again."
    : `This is a fault of Fanrow and none of yours; nothing more was done. Please report "${what}", with what you did just before.`;
}
