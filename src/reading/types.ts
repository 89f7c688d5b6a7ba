import type { CellValue, Spot } from "../cells";
import type { ReadGrid } from "./host";
import type { LotRole } from "./words/lots";

/** What a line of cells holds. One word a meaning; the words of headings are in `words`. */
export const roles = [
  "dwelling",
  "fan",
  "room",
  "duty",
  "box",
  "opening",
  "area",
  "diameter",
  "pressure",
  "flow",
  "required",
  "verdict",
  "tester",
  "date",
  "rated",
  "constant",
  "note",
] as const;
export type Role = (typeof roles)[number];

/** What tells a role, and how strongly: kept apart, so that each can be shown and taken away. */
export type EvidenceKind = "choice" | "words" | "values" | "formulas" | "physics";

export interface Evidence {
  readonly kind: EvidenceKind;
  readonly weight: number;
  /** One reason in words: `the heading says "Box Pa"`. */
  readonly because: string;
}

/** A line that might have a role. */
export interface Candidate {
  /** Column (row, where the block is turned), counted from 0. */
  readonly line: number;
  /** Its heading with those above it; its letters or number where that does not tell it from others. */
  readonly name: string;
  readonly weight: number;
}

/** A line of cells taken for a role in one block. */
export interface RoleLine {
  readonly role: Role;
  /** Column (row, where the block is turned), counted from 0. */
  readonly line: number;
  readonly heading: string;
  /** The name of the unit in `src/units`; undefined where none is known. */
  readonly unit: string | undefined;
  readonly evidence: readonly Evidence[];
  /** By how much it beats the next line, or the next role for this line. */
  readonly margin: number;
}

/** What one field of a reading holds and where it stands. */
export interface FieldValue {
  readonly value: CellValue;
  readonly place: Spot;
  /**
   * "cell": a cell of the reading's own row. Otherwise told for several readings at once: by the
   * heading of the block, a line above it, a label and value beside or above it, the name of the
   * sheet, a number in the verdict's formula, or the list of openings.
   */
  readonly from: "cell" | "heading" | "above" | "label" | "sheet" | "formula" | "openings";
}

/** How the block runs and what a reading is in it. */
export type Layout =
  | "a row a fan"
  | "grouped under lines"
  | "fans side by side"
  | "retests"
  | "cards"
  | "fans in columns";

/**
 * One run of readings that share their lines. A sheet has several where fans stand side by side,
 * where a retest has columns of its own, and where cards differ.
 */
export interface Block {
  readonly sheet: string;
  readonly grid: ReadGrid;
  readonly layout: Layout;
  /** Whether fields stand in rows and fans in columns. */
  readonly turned: boolean;
  /** Rows (columns, where turned) of the headings. */
  readonly headings: readonly number[];
  /** Rows (columns, where turned) with a fan: read, listed without a reading, or both. */
  readonly fans: Int32Array;
  /** 1 for each of `fans` that holds a reading: a pressure or a flow that was typed. */
  readonly read: Uint8Array;
  /** How many of `fans` hold a reading. */
  readonly readings: number;
  readonly roles: ReadonlyMap<Role, RoleLine>;
  /** Every line of the block for a role, the likeliest first. */
  candidates(role: Role): readonly Candidate[];
  /** Repeated readings of one fan, where they have lines of their own beside `pressure`. */
  readonly repeats: readonly RoleLine[];
  /** Rows left out as subtotals, averages or group lines. */
  readonly skipped: readonly number[];
  /**
   * Rows of the mean of several tests, where what is required stands beside the mean alone. Their
   * fields are asked for by the numbers that follow those of `fans`.
   */
  readonly means: readonly MeanRow[];
  readonly habits: Habits;
  /** A retest of the fans of this other block, in lines of its own; the index in `blocks`. */
  readonly retestOf: number | undefined;
  /** Row (column, where turned) of a fan or of a mean. */
  along(index: number): number;
  /** The place of a field in `fans[index]`; null where the block has no line for the role. */
  place(index: number, role: Role): Spot | null;
  /** What is held or told for a field of `fans[index]`; null where nothing tells it. */
  field(index: number, role: Role): FieldValue | null;
  /** The number of a field, also one written as text ("4,4", "3.2 Pa"); null where there is none. */
  number(index: number, role: Role): number | null;
}

/** The mean of several tests of a fan, which is held against what the fan is to reach. */
export interface MeanRow {
  /** Row (column, where turned) of the mean. */
  readonly row: number;
  /** The tests that it is of, by their numbers in the block. */
  readonly of: readonly number[];
}

/** Something stated or followed by most readings, with how it is known. */
export interface Habit<T> {
  readonly value: T;
  /** Share of the readings that follow it, 1 where it is stated. */
  readonly share: number;
  /** Where it is stated; undefined where it was learnt from the readings. */
  readonly stated: Spot | undefined;
  readonly because: string;
}

/** An opening of a box by the firm's own name. */
export interface OpeningEntry {
  readonly name: string;
  /** In the unit of the block's area, or of its own list. */
  readonly area: number | undefined;
  readonly diameter: number | undefined;
  readonly unit: string | undefined;
  readonly place: Spot;
}

/** A required rate of the firm's own, learnt from most rows of its room and duty. */
export interface FirmRate {
  readonly room: string;
  readonly duty: string;
  readonly rate: number;
  /** Rows that follow it, and rows of that room and duty. */
  readonly follow: number;
  readonly rows: number;
}

/** What a sheet keeps to of its own accord. A slip is what departs from it. */
export interface Habits {
  /** "box" where the box is read against the room: an exhaust fan then gives negative pressures. */
  readonly sign: Habit<"room" | "box"> | undefined;
  /** flow = constant × area × √|pressure|, in the units of the sheet. */
  readonly constant: Habit<number> | undefined;
  /** Stated lowest and highest pressure, in the unit of the pressures. */
  readonly window: Habit<readonly [number, number]> | undefined;
  readonly units: Readonly<Partial<Record<Role, string>>>;
  readonly decimalComma: boolean;
  readonly pass: readonly string[];
  readonly fail: readonly string[];
  /** Words of the verdict column that mean neither, such as "not tested". */
  readonly neither: readonly string[];
  /** Words for a duty, as written: "24/7" → continuous. Words not known are in `unknown`. */
  readonly duties: ReadonlyMap<string, "continuous" | "on demand">;
  readonly rooms: ReadonlyMap<string, RoomKind>;
  readonly unknown: readonly {
    readonly role: "duty" | "room" | "verdict";
    readonly word: string;
  }[];
  readonly openings: readonly OpeningEntry[];
  readonly rates: readonly FirmRate[];
  /** How the verdict is given: flow against the required rate, a number of its own, or typed. */
  readonly verdict: "flow against required" | "flow against a number" | "typed" | undefined;
  /** The day the job began, a serial number, where the workbook states it. */
  readonly start: Habit<number> | undefined;
  /** Decimals to which the flow is rounded; undefined where it is not. */
  readonly rounding: number | undefined;
}

export const roomKinds = [
  "bathroom",
  "half bath",
  "kitchen",
  "kitchen hood",
  "laundry",
  "other",
] as const;
export type RoomKind = (typeof roomKinds)[number];

/** Readings or tables passed over, in one line. */
export interface NotRead {
  readonly sheet: string;
  /** Rows (columns, where turned) passed over. */
  readonly lines: readonly number[];
  readonly because: string;
}

/** The user's own word on a line or a sheet: it outranks everything. */
export interface Choice {
  /** "" for any sheet. */
  readonly sheet: string;
  /** The heading as it stands in the sheet, the letters of a column, or "" for the sheet as a whole. */
  readonly heading: string;
  /** null: the line stands for nothing of ours, or the sheet holds no fans. */
  readonly role: Role | "fans" | null;
}

/**
 * The user's own word on what a sheet keeps to: what a word for a room, a duty or a verdict means,
 * the unit of a role (word "unit"), or how pressures are read (role "pressure", word "sign",
 * meaning "room" or "box").
 */
export interface Meaning {
  readonly role: Role;
  readonly word: string;
  readonly means: string;
}

/** All that the user has said of how to read. Where two speak of the same, the first holds. */
export interface Answers {
  readonly choices: readonly Choice[];
  readonly meanings: readonly Meaning[];
}

/** A room of a lot that is to have a fan; what the list does not say is left out. */
export interface LotRoom {
  readonly word: string;
  readonly kind: RoomKind | undefined;
  readonly duty: "continuous" | "on demand" | undefined;
  readonly whole: boolean | undefined;
  /** Further cells of its row by role: tag, volume, duct and box. */
  readonly cells: Readonly<Partial<Record<LotRole, CellValue>>>;
}

/** A dwelling to be built, or, where `name` is "", a plan that dwellings are built to. */
export interface Lot {
  readonly name: string;
  readonly plan: string;
  readonly phase: string;
  readonly floor: number | undefined;
  readonly bedrooms: number | undefined;
  /** How many fans its own column says. */
  readonly fans: number | undefined;
  readonly rooms: readonly LotRoom[];
  /** Row of the sheet, from 0. */
  readonly row: number;
}

/** A list of lots or of plans: no readings of fans, but what is to be built. */
export interface LotList {
  readonly sheet: string;
  readonly lots: readonly Lot[];
  /** Units that headings say. */
  readonly units: Readonly<Partial<Record<LotRole, string | undefined>>>;
  /** Which column was taken for what, by its heading. */
  readonly taken: readonly { readonly heading: string; readonly as: string }[];
}

/** All that was read of one workbook. */
export interface WorkbookReading {
  /** No fan readings were found: nothing is to be checked. */
  readonly noFans: boolean;
  /** Why there are none, or what was read, in one line. */
  readonly because: string;
  readonly blocks: readonly Block[];
  readonly openings: readonly OpeningEntry[];
  readonly notRead: readonly NotRead[];
  /** Lists of lots or plans: they hold no readings. */
  readonly lots: readonly LotList[];
}
