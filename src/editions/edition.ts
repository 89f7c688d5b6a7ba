import type { Source } from "../formulas";

/** "ip": cfm, ft², ft³. "si": L/s, m², m³. Each has its own numbers; none is converted. */
export type System = "ip" | "si";

export const roomKinds = ["bathroom", "toilet", "kitchen hood", "kitchen", "utility"] as const;
/** "kitchen hood" is a hood that exhausts outdoors; "kitchen" any other kitchen exhaust. */
export type RoomKind = (typeof roomKinds)[number];

export const duties = ["on demand", "continuous"] as const;
export type Duty = (typeof duties)[number];

/** A number for each system that the edition itself states. */
export type Rate = Readonly<Partial<Record<System, number>>>;

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
  /** Rates for 0, 1, 2 … bedrooms. */
  readonly byBedrooms: readonly number[];
  readonly eachFurther: number;
  readonly source: Source;
  readonly areaSource: Source;
}

export type DwellingRule = EquationRule | TableRule | LargerRule;
export type Method = DwellingRule["method"];

/** Run-time factors: share of each segment that the fan runs, and what to multiply the rate by. */
export interface RunTimeRule {
  readonly segmentHours: number;
  readonly rows: readonly (readonly [share: number, factor: number])[];
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
  readonly runTime?: RunTimeRule;
  readonly notes: readonly string[];
}
