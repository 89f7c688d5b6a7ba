import type { Source } from "../formulas";
import type { Rate, System } from "./rate";
import type { RoomKind } from "./room";

/** `rate = areaRate · floor area + personRate · (bedrooms + 1)`, and not below `least` */
export interface EquationRule {
  readonly method: "equation";
  readonly areaRate: Rate;
  readonly personRate: Rate;
  readonly leastBedrooms: number;
  /** Where the least was not traced with the rest. */
  readonly leastSource?: Source;
  readonly least?: Rate;
  /** What each person above bedrooms + 1 adds. */
  readonly furtherPerson?: { readonly each: Rate; readonly source: Source };
  readonly source: Source;
}

/** A printed table: rows by floor area, columns by bedrooms; each edge belongs to its cell. */
export interface TableRule {
  readonly method: "table";
  readonly system: System;
  /** Upper edge of each row; Infinity for an open last row. */
  readonly areas: readonly number[];
  /** Most bedrooms of each column; Infinity for an open last column. */
  readonly bedrooms: readonly number[];
  readonly leastBedrooms: number;
  readonly cells: readonly (readonly number[])[];
  readonly source: Source;
}

/** The larger of an area rate and a rate by bedrooms. */
export interface LargerRule {
  readonly method: "larger";
  readonly system: System;
  readonly areaRate: number;
  readonly leastBedrooms: number;
  /** Rates for the least number of bedrooms, one more, two more … */
  readonly byBedrooms: readonly number[];
  /** Left out where the edition has no rate for more bedrooms. */
  readonly eachFurther?: number;
  /** Set where the rate goes by persons; bedrooms + 1 are taken where they are fewer or not known. */
  readonly byPersons?: true;
  /** Most that the system may move, for the same bedrooms. */
  readonly mostByBedrooms?: readonly number[];
  readonly source: Source;
  readonly areaSource: Source;
}

/** An area rate between a least and a most, whatever the number of bedrooms. */
export interface BoundedRule {
  readonly method: "bounded";
  readonly system: System;
  readonly areaRate: number;
  readonly least: number;
  readonly most: number;
  readonly source: Source;
}

export type DwellingRule = EquationRule | TableRule | LargerRule | BoundedRule;
export type Method = DwellingRule["method"];

/** Existing buildings: weak room fans may stay if the dwelling rate rises by a share of the deficits. */
export interface DeficitRule {
  readonly rooms: readonly { readonly room: RoomKind; readonly rate: Rate }[];
  /** What an openable window in the room counts for. */
  readonly window: Rate;
  /** The part of the deficits' sum that is added to the dwelling rate. */
  readonly share: number;
  readonly source: Source;
}
