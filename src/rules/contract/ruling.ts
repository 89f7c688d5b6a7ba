import { typeset } from "../../algebra";
import { kept } from "../../cells";
import { type Edition, editions, type System, UnknownNameError } from "../../editions";
import type { Formula, Source, Unit } from "../../formulas";
import type { Answer, Sum } from "./rule";

/** What a rule of an edition says: a number or a word, where it stands, and how it came about. */
export class Ruling<T = number> {
  constructor(
    readonly value: T,
    readonly source: Source,
    readonly system: System,
    /** Sums, and what no formula says. */
    readonly parts: readonly (Sum | string)[],
  ) {}

  /** How it came about, in words and numbers on one line. */
  get working(): string {
    return this.parts
      .map((part) =>
        typeof part === "string"
          ? part
          : typeset(part.formula, this.system, part.given).numbers.join("; "),
      )
      .join("; ");
  }

  /** The same as the answer of a worksheet function. */
  answer(this: Ruling<number | string>, unit: Unit = "1"): Answer {
    const sums = this.parts.filter((part) => typeof part !== "string");
    const words = this.parts.filter((part) => typeof part === "string");
    return {
      gives: this.value,
      why: () => ({
        sums,
        words,
        sources: [this.source],
        ...(typeof this.parts.at(-1) === "string" ? { unit } : {}),
      }),
    };
  }
}

/** The rate that an edition asks, cfm (ip) or L/s (si). */
export class RequiredRate extends Ruling {
  constructor(
    rate: number,
    source: Source,
    system: System,
    parts: readonly (Sum | string)[],
    /** The most that may be moved, in the same unit, where the edition sets a band. */
    readonly most?: number,
  ) {
    super(rate, source, system, parts);
  }

  get rate(): number {
    return this.value;
  }

  /** The rate that comes of a further sum. */
  followedBy(rate: number, source: Source, further: Sum): RequiredRate {
    return new RequiredRate(rate, source, this.system, [...this.parts, further]);
  }
}

/** Of a flow, in the system of the call. */
export const flowUnits = { ip: "cfm", si: "L/s" };

export const flowUnit = (system: System): string => flowUnits[system];

export const sum = (formula: Formula, given: Sum["given"]): Sum => ({ formula, given });

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

/** One for each edition and rule: a job asks it of thousands of rows. */
const noRules = new Map<string, UnknownNameError>();

export function noRule(
  edition: Edition,
  what: string,
  has: (edition: Edition) => boolean,
): UnknownNameError {
  return kept(noRules, `${edition.id} ${what}`, () => {
    const known = editions.filter(has).map(({ id }) => id);
    return new UnknownNameError(`${edition.id} has no ${what}: use one of ${known.join(", ")}`);
  });
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

export function requireSystem(edition: Edition, system: System): void {
  if (edition.systems.includes(system)) return;
  const [own = "ip"] = edition.systems;
  throw new UnknownNameError(
    `${edition.id} states its numbers in ${flowUnits[own]} only: set units to "${own}"`,
  );
}
