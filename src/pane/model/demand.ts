import { attempt, type Ruling } from "../../job";
import { sentenceOf } from "./in-words";
import { type Clause, clauseOf } from "./marks";

/** One demand on a fan apart from its flow: what is asked and what the sheet says of the fan. */
export interface EquipmentView {
  readonly title: string;
  /** What the fan has; "not stated" where the sheet does not say. */
  readonly own: string;
  readonly outcome:
    | {
        /** "2.8 cfm/W or more" */
        readonly asked: string;
        /** "met", "not met" and the like; "" where the fan's own number is not stated. */
        readonly verdict: string;
        /** Whether the demand is met; undefined where that cannot be said or is not asked. */
        readonly isMet: boolean | undefined;
        readonly working: readonly string[];
        readonly clauses: readonly Clause[];
      }
    | { readonly problem: string };
}

type Asked = { readonly asked: string; readonly isMet: boolean | undefined; verdict?: string };

/** A demand by the rule that `make` applies; what the rule throws says why there is none. */
export function viewOf<R extends Ruling<unknown>>(
  title: string,
  own: string,
  make: () => R,
  say: (ruling: R) => Asked,
): EquipmentView {
  const found = attempt(make);
  if ("problem" in found) return { title, own, outcome: { problem: sentenceOf(found.problem) } };
  const { asked, isMet, verdict } = say(found.value);
  const { source, working } = found.value;
  return {
    title,
    own,
    outcome: {
      asked,
      verdict: verdict ?? (isMet === undefined ? "" : isMet ? "met" : "not met"),
      isMet,
      working: working.split("; "),
      clauses: [clauseOf(source)],
    },
  };
}

/** Whether a fan's own number stays within a limit; undefined where it is not stated. */
export function atMost(own: number, most: number): boolean | undefined {
  return Number.isNaN(own) ? undefined : own <= most;
}
