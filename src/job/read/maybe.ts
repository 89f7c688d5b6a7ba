import { InputError } from "../../cells";

/** A result, or the reason why there is none. */
export type Maybe<T> = { readonly value: T } | { readonly problem: InputError };

/** What `make` gives, or what of the user's keeps it from it. A fault of the program is thrown on. */
export function attempt<T>(make: () => T): Maybe<T> {
  try {
    return { value: make() };
  } catch (problem) {
    if (!(problem instanceof InputError)) throw problem;
    return { problem };
  }
}

/** The result where there is one. */
export function valueIn<T>(maybe: Maybe<T>): T | undefined {
  return "value" in maybe ? maybe.value : undefined;
}

/** The result; throws the reason where there is none. */
export function valueOrThrow<T>(maybe: Maybe<T>): T {
  if ("problem" in maybe) throw maybe.problem;
  return maybe.value;
}
