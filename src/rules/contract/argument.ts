import type { System } from "../../editions";
import type { Need } from "./need";

/**
 * What a blank cell makes of its row: a blank result, since nothing was read yet; an error, since
 * the value is needed; or what comes of an argument that is left out.
 */
export type Blank = "nothing yet" | "needed" | "left out";

export type BySystem<T> = T | Readonly<Record<System, T>>;

interface Any<V> {
  /** May be left out at the end of a call. */
  readonly optional?: true;
  /** Carries the type of what the work gets; never there. */
  readonly gives?: V;
}

/** A number a row. A 0 that can never be meant counts as blank: some hosts pass 0 for a blank cell. */
export interface NumberArgument<V = unknown> extends Any<V> {
  readonly kind: "number";
  readonly blank: Blank;
  readonly need?: BySystem<Need>;
  /** Serves where the argument is left out. */
  readonly otherwise?: BySystem<number>;
  /** 0 could be a reading or a blank cell: it is told as such, never reckoned with. */
  readonly zeroIsTold?: true;
  /** Words that stand for a number. */
  readonly words?: Readonly<Record<string, number>>;
}

/** The name tables of the plain copy. */
export type NameTable = "edition" | "room" | "duty" | "cooking" | "fan" | "duct";

/** A text a row, such as a name. Numbers become their digits; 0 counts as blank. */
export interface NameArgument<V = unknown> extends Any<V> {
  readonly kind: "name";
  readonly blank: Blank;
  /** How to mend a blank: "name one, such as bathroom". */
  readonly ask?: string;
  /** What the text means; throws an InputError for a text that means nothing. */
  readonly read: (text: string, name: string) => V;
  readonly table?: NameTable;
}

/** Readings of one thing side by side in a row; blanks among them are passed over. */
export interface RepeatsArgument extends Any<readonly number[]> {
  readonly kind: "repeats";
  readonly need?: Need;
}

/** All cells of a range, as they are. Lists of one call have one length. */
export interface ListArgument extends Any<readonly unknown[]> {
  readonly kind: "list";
}

/** The numbers of a whole range; blanks are passed over. */
export interface NumbersArgument extends Any<readonly number[]> {
  readonly kind: "numbers";
  readonly need: Need;
  /** Without any number there is no result yet. */
  readonly isReading?: true;
}

/** Numbers that belong to those of the other ranges of a call, cell by cell: one result for all. */
export interface PairsArgument extends Any<readonly number[]> {
  readonly kind: "pairs";
  readonly need: Need;
  /** A pair in which this one is blank is passed over; else it is an error. */
  readonly isReading?: true;
}

export interface UnitsArgument extends Any<System> {
  readonly kind: "units";
}

/** One text for the whole call, or whatever values follow: for functions that tell of others. */
export interface OtherArgument extends Any<unknown> {
  readonly kind: "word" | "rest";
  /** A word may be a range, whose first cell counts. */
  readonly isRange?: true;
}

export type Argument =
  | NumberArgument
  | NameArgument
  | RepeatsArgument
  | ListArgument
  | NumbersArgument
  | PairsArgument
  | UnitsArgument
  | OtherArgument;

export type Arguments = Readonly<Record<string, Argument>>;

/** What the work of one row gets. */
export type Given<A extends Arguments> = {
  readonly [N in keyof A]: A[N] extends { readonly gives?: infer V } ? V : never;
};

/** A reading: without it the row is not filled in yet. */
export const reading = (need?: BySystem<Need>): NumberArgument<number> => ({
  kind: "number",
  blank: "nothing yet",
  ...(need ? { need } : {}),
});

/** A number without which no result can be worked out. */
export const needed = (need?: BySystem<Need>): NumberArgument<number> => ({
  ...reading(need),
  blank: "needed",
});

/** A number that may be left out or blank. */
export const ifGiven = (need?: BySystem<Need>): NumberArgument<number | undefined> => ({
  kind: "number",
  blank: "left out",
  ...(need ? { need } : {}),
});

/** A number for which another serves where it is left out. */
export const orElse = (otherwise: BySystem<number>, need: Need): NumberArgument<number> => ({
  ...needed(need),
  otherwise,
});

/** A name that is needed. */
export const named = <V>(
  read: (text: string, name: string) => V,
  ask: string,
  table?: NameTable,
): NameArgument<V> => ({
  kind: "name",
  blank: "needed",
  ask,
  read,
  ...(table ? { table } : {}),
});

/** A name without which the row is not filled in yet. */
export const nameToCome = <V>(
  read: (text: string, name: string) => V,
  table?: NameTable,
): NameArgument<V> => ({
  kind: "name",
  blank: "nothing yet",
  read,
  ...(table ? { table } : {}),
});

/** A name that may be left out or blank. */
export const namedIfGiven = <V>(
  read: (text: string, name: string) => V,
  table?: NameTable,
): NameArgument<V | undefined> => ({
  kind: "name",
  blank: "left out",
  read,
  ...(table ? { table } : {}),
});

/** May be left out at the end of a call. */
export const optional = <T extends Argument>(argument: T): T & { readonly optional: true } => ({
  ...argument,
  optional: true,
});

export function inSystem<T extends object | number>(value: BySystem<T>, system: System): T {
  return typeof value === "object" && "ip" in value
    ? (value as Readonly<Record<System, T>>)[system]
    : (value as T);
}
