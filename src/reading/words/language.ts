import type { RoleOrOther } from "../roles";
import type { RoomKind } from "../types";

/** Phrases by how strongly they tell, separated by commas: `{ 4: "lot, unit", 2: "site" }`. */
export type Phrases = Readonly<Record<number, string>>;

/**
 * The words of one language, as data. Lower case, without accents. Spelling slips of a letter or
 * two, plurals and abbreviations ("press.", "req") are understood without being listed.
 */
export interface Language {
  readonly name: string;
  /** Words of headings. "other" are headings that look like a role and are none. */
  readonly headings: Readonly<Partial<Record<RoleOrOther, Phrases>>>;
  readonly rooms: Readonly<Partial<Record<RoomKind, string>>>;
  readonly duties: { readonly continuous: string; readonly "on demand": string };
  readonly verdicts: { readonly pass: string; readonly fail: string; readonly neither: string };
  /** Words that begin a dwelling's name: "Lot 7", "WE 01". */
  readonly dwellings: string;
  /** Labels of rows that sum up others. */
  readonly totals: string;
  /** Words for a test that is not one of exhaust fans. */
  readonly otherTests: string;
  /** Words for exhaust fans and their test, in titles and names of sheets. */
  readonly fanTests: string;
  /** Words over the lines of a second test. */
  readonly retest: string;
  /** Labels of single cells beside the table. */
  readonly labels: {
    readonly constant: string;
    readonly start: string;
    readonly lowest: string;
    readonly highest: string;
  };
  /** The box and the room, as a note on the sign of the pressure names them. */
  readonly sign: {
    readonly box: string;
    readonly room: string;
    readonly against: string;
    /** Words that say outright that the box reads below, or above, nothing. */
    readonly negative: string;
  };
}
