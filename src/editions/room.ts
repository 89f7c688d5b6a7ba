import type { Source } from "../formulas";
import type { Rate } from "./rate";

export const roomKinds = ["bathroom", "toilet", "kitchen hood", "kitchen", "utility"] as const;
/** "kitchen hood" is a hood that exhausts outdoors; "kitchen" any other kitchen exhaust. */
export type RoomKind = (typeof roomKinds)[number];

export const duties = ["on demand", "continuous"] as const;
export type Duty = (typeof duties)[number];

/**
 * What a number is a number of: what the system is designed to move, what the fan is listed at,
 * what is measured at the grille, what a model on site is listed at, or a least and a most.
 */
export type NumberKind = keyof typeof kindWords;

/** The kinds in a few words, as they stand beside a rate. */
const kindWords = {
  capacity: "a capacity: what the system is designed to move",
  listed: "a listed rate: that of the fan's rating",
  delivered: "a delivered flow: what is measured at the grille",
  "model check": "a model check: what the model found on site is listed at",
  band: "a band: a least and a most",
} as const;

/** What a room's number is a number of, with the pressure of the listing that goes with it. */
export const kindOf = ({ is, listedAt }: RoomRule): string =>
  `${kindWords[is]}${listedAt === undefined ? "" : `, with the fan listed for it (at ${listedAt} in w.c.)`}`;

/** What a kitchen cooks with, where hoods go by that. */
export const cookings = ["electric", "fuel"] as const;
export type Cooking = (typeof cookings)[number];

/** A rule holds only where all of these do; what is not known counts as holding. */
export interface Condition {
  readonly cooking?: Cooking;
  /** Floor area of the dwelling, ft² or m². */
  readonly floorAbove?: number;
  readonly floorTo?: number;
  /** Only in a room without a window that opens. */
  readonly window?: "none";
}

/** What one edition asks of one kind of room at one duty; of several, the largest stands first. */
export interface RoomRule {
  readonly room: RoomKind;
  readonly duty: Duty;
  /** A fixed least rate. */
  readonly rate?: Rate;
  /** Air changes an hour of the room's own volume: instead of `rate`, or beside it. */
  readonly airChanges?: number;
  /** How `airChanges` goes beside `rate`; the smaller is enough where nothing is said. */
  readonly together?: "both";
  /** The air changes count in an enclosed kitchen only. */
  readonly enclosedOnly?: true;
  readonly when?: Condition;
  /** Percent of the cooking's smoke that a listed hood may catch instead. */
  readonly captures?: number;
  /** in w.c. at which the fan must be listed. */
  readonly listedAt?: number;
  readonly is: NumberKind;
  readonly note?: string;
  readonly source: Source;
}

type Cell = number | null;
/** A room with its rates on demand and continuous; null where the edition has none. */
export type RoomRow = readonly [room: RoomKind, onDemand: Cell, continuous: Cell];

/** Rules of a plain table in one system of units. */
export function roomTable(
  shared: Omit<RoomRule, "room" | "duty" | "rate" | "source"> & { readonly system: keyof Rate },
  source: (duty: Duty, room: RoomKind) => Source,
  rows: readonly RoomRow[],
): RoomRule[] {
  const { system, ...rest } = shared;
  return rows.flatMap(([room, ...cells]) =>
    duties.flatMap((duty, i): RoomRule[] => {
      const value = cells[i];
      if (value === null || value === undefined) return [];
      return [{ room, duty, rate: { [system]: value }, ...rest, source: source(duty, room) }];
    }),
  );
}
