import { typeset } from "../algebra";
import { type Edition, editions, type System, UnknownNameError } from "../editions";
import type { Formula, Source } from "../formulas";

/** What a rule says: a number or a word, where it stands, and how it came about. */
export interface Ruling<T> {
  readonly value: T;
  readonly source: Source;
  readonly working: string;
}

/** The part of an edition that holds one kind of rule. Throws with the editions that have it. */
export function ruleOf<K extends "infiltration" | "credit" | "deficits">(
  edition: Edition,
  part: K,
  what: string,
): NonNullable<Edition[K]> {
  const rule = edition[part];
  if (rule === undefined) throw noRule(edition, what, (each) => each[part] !== undefined);
  return rule as NonNullable<Edition[K]>;
}

export function noRule(
  edition: Edition,
  what: string,
  has: (edition: Edition) => boolean,
): UnknownNameError {
  const known = editions.filter(has).map(({ id }) => id);
  return new UnknownNameError(`${edition.id} has no ${what}: use one of ${known.join(", ")}`);
}

/** A code's number in the units asked for; it is never converted. */
export function statedIn(
  rate: Readonly<Partial<Record<System, number>>>,
  system: System,
  code: string,
): number {
  const value = rate[system];
  if (value !== undefined) return value;
  const own: System = system === "ip" ? "si" : "ip";
  throw new UnknownNameError(
    `${code} states this in ${own === "ip" ? "cfm, ft and in" : "L/s and m"} only: set units to "${own}"`,
  );
}

/** A formula with these numbers in it, on one line. */
export function worked(
  formula: Formula,
  given: Readonly<Record<string, number>>,
  system: System,
): string {
  return typeset(formula, system, given).numbers.join("; ");
}
