import { flowUnit, type Job, type RequiredRate, shown } from "../../job";
import { sentenceOf } from "./in-words";
import { type Clause, clauseOf } from "./marks";

/** A number with the way to it, or why there is none. */
export type Outcome =
  | {
      /** "50 cfm" */
      readonly rate: string;
      readonly working: readonly string[];
      readonly clause: Clause;
    }
  | { readonly problem: string };

/** What a rule came to, or the error that it threw. */
type Found = { readonly value: RequiredRate } | { readonly problem: unknown };

export function outcomeOf(found: Found, job: Job): Outcome {
  if ("problem" in found) return { problem: sentenceOf(found.problem) };
  const { rate, source, working } = found.value;
  return {
    rate: `${shown(rate)} ${flowUnit(job.settings.system)}`,
    working: working.split("; "),
    clause: clauseOf(source),
  };
}

/** What `make` gives, or the error that it throws. */
export function attempt<T>(make: () => T): { readonly value: T } | { readonly problem: unknown } {
  try {
    return { value: make() };
  } catch (problem) {
    return { problem };
  }
}
