import { shown } from "../../cells";
import { flowUnit, type Job, type Maybe, type RequiredRate, type Table } from "../../job";
import { percentOf, sentenceOf } from "./in-words";
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

export function outcomeOf(found: Maybe<RequiredRate>, job: Job): Outcome {
  if ("problem" in found) return { problem: sentenceOf(found.problem) };
  const { rate, source, working } = found.value;
  return {
    rate: `${shown(rate)} ${flowUnit(job.settings.system)}`,
    working: working.split("; "),
    clause: clauseOf(source),
  };
}

/** What a row says in these of its fields, each by its title; blank ones are left out. */
export function statedIn(table: Table, i: number, keys: readonly string[]) {
  return keys.flatMap((key) => {
    const value = table.has(key) ? table.text(key, i) : "";
    if (value === "") return [];
    const { title, format } = table.field(key);
    if (format?.endsWith("%")) return [{ name: title, value: percentOf(table.number(key, i)) }];
    const unit = key === "capture" ? "%" : (table.unit(key, i) ?? "");
    return [{ name: title, value: `${value} ${unit}`.trim() }];
  });
}
