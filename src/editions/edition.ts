import type { Source } from "../formulas";
import type { CreditRule, InfiltrationRule } from "./infiltration";
import type { Rate, System } from "./rate";
import type { CycleRule, RunTimeRule } from "./run-time";

export const roomKinds = ["bathroom", "toilet", "kitchen hood", "kitchen", "utility"] as const;
/** "kitchen hood" is a hood that exhausts outdoors; "kitchen" any other kitchen exhaust. */
export type RoomKind = (typeof roomKinds)[number];

export const duties = ["on demand", "continuous"] as const;
export type Duty = (typeof duties)[number];

/** What one edition asks of one kind of room at one duty. */
export interface RoomRule {
  readonly room: RoomKind;
  readonly duty: Duty;
  /** A fixed least rate. */
  readonly rate?: Rate;
  /** Air changes an hour of the room's own volume: instead of `rate`, or beside it as the smaller. */
  readonly airChanges?: number;
  readonly note?: string;
  readonly source: Source;
}

/** `rate = areaRate · floor area + personRate · (bedrooms + 1)` */
export interface EquationRule {
  readonly method: "equation";
  readonly areaRate: Rate;
  readonly personRate: Rate;
  readonly leastBedrooms: number;
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
  readonly eachFurther: number;
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

/** One edition of a standard or code, as data. */
export interface Edition {
  /** Written in job workbooks; never changes once released. */
  readonly id: string;
  readonly title: string;
  /** Other spellings that are taken for this edition. */
  readonly aliases: readonly string[];
  readonly systems: readonly System[];
  readonly rooms: readonly RoomRule[];
  /** The first is what applies when no method is named. */
  readonly dwelling: readonly DwellingRule[];
  readonly infiltration?: InfiltrationRule;
  readonly credit?: CreditRule;
  readonly runTime?: RunTimeRule;
  readonly cycle?: CycleRule;
  readonly deficits?: DeficitRule;
  readonly notes: readonly string[];
}
