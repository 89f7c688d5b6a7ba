/** How far a number or formula has been traced to its source. */
export type Mark =
  /** Read in the named text. */
  | "read"
  /** Read in two independent texts, or read once and recomputed to the same digits. */
  | "two sources"
  /** Recalled, not read: verify against your copy. */
  | "from memory"
  /** What the trade does, with no text behind it. */
  | "common practice"
  /** Follows from a definition by arithmetic. */
  | "by definition";

/** Where a formula or a number comes from. */
export interface Source {
  readonly work: string;
  readonly clause: string;
  readonly mark: Mark;
  /** In what the number was read, where that is not the work itself. */
  readonly document?: string;
  /** The day on which it was read there, such as 2026-11-27. */
  readonly traced?: string;
}

/** A unit shared by both systems, or one for each: "ip" (in², cfm, ft²) and "si" (cm², L/s, m²). */
export type Unit = string | { readonly ip: string; readonly si: string };

/** One symbol of a formula. `name` stands in the text; `shown` is how people write it. */
export interface Quantity {
  readonly name: string;
  readonly shown: string;
  readonly meaning: string;
  readonly unit: Unit;
  /** Values between which the formula is valid for this symbol. */
  readonly valid: readonly [low: number, high: number];
}

/** An intermediate result, usable by later steps and by the final text. */
export interface Step {
  readonly name: string;
  readonly shown: string;
  readonly meaning: string;
  readonly unit: Unit;
  readonly text: string;
}

/** A formula, written once. `src/algebra` reads it as columns, slopes, a native formula or print. */
export interface Formula {
  readonly id: string;
  readonly title: string;
  readonly result: {
    readonly name: string;
    readonly shown: string;
    readonly meaning: string;
    readonly unit: Unit;
  };
  readonly symbols: readonly Quantity[];
  readonly steps?: readonly Step[];
  readonly text: string;
  readonly validity: string;
  readonly source: Source;
}

export function unitIn(unit: Unit, system: "ip" | "si"): string {
  return typeof unit === "string" ? unit : unit[system];
}
