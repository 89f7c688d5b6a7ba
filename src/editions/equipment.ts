import type { Source } from "../formulas";
import type { Rate } from "./rate";
import type { Duty } from "./room";

export const fanKinds = [
  "heat recovery",
  "range hood",
  "in-line",
  "bath or utility",
  "air handler",
] as const;
/** "bath or utility" stands for every other exhaust fan where a code says so. */
export type FanKind = (typeof fanKinds)[number];

/** Least flow for each watt (cfm/W) of a kind of fan, for rated flows from one to below another. */
export interface EfficacyRow {
  readonly fan: FanKind;
  readonly from?: number;
  readonly below?: number;
  readonly least: Rate;
  readonly source: Source;
}

/** The loudest rating, in sones, that a fan may have. */
export interface SoundLimit {
  readonly limits: Readonly<Record<Duty, number>>;
  /** A fan of more than this flow is exempt. */
  readonly exemptAbove: Rate;
  /** Where the exemption was not traced with the limits. */
  readonly exemptSource?: Source;
  /** A fan mounted outside the rooms is exempt if at least this much duct (ft) lies between. */
  readonly remoteDuct: Rate;
  readonly source: Source;
}

export const ductKinds = ["flex", "smooth"] as const;
export type DuctKind = (typeof ductKinds)[number];

/** Infinity: no limit. 0: not allowed. */
export interface DuctRow {
  readonly duct: DuctKind;
  /** Inches; the last row of a kind also serves wider ducts. */
  readonly diameter: number;
  /** Feet of straight duct, one for each rated flow. */
  readonly lengths: readonly number[];
  readonly source: Source;
}

/** Longest exhaust duct for a fan of this rating. A measured flow may stand in its place. */
export interface DuctTable {
  /** in w.c. at which the fan's flow is rated. */
  readonly ratedAt: number;
  /** cfm; a flow between two counts as the higher. */
  readonly ratedFlows: readonly number[];
  /** Feet that each elbow beyond the free ones takes off. */
  readonly elbow: number;
  readonly freeElbows?: number;
  readonly rows: readonly DuctRow[];
  readonly source: Source;
  /** Where the rule says that the length is free once the flow has been measured. */
  readonly waivedByMeasuring: { readonly source: Source };
}

/** Above this exhaust the dwelling needs makeup air. */
export interface MakeupAirLimit {
  readonly above: Rate;
  /** Only where a fuel appliance inside is neither direct-vent nor mechanical-draft. */
  readonly onlyWithAppliance: boolean;
  /** What takes the place of `above` where no such appliance is inside. */
  readonly aboveWithout?: Rate;
  readonly note?: string;
  readonly source: Source;
}

/** What a balanced system, ducted to the rooms that the code names, takes off the dwelling rate. */
export interface BalancedCredit {
  readonly reduction: number;
  /** What a system adds that is only one of balanced and distributed, or neither. */
  readonly increase?: { readonly one: number; readonly neither: number };
  readonly source: Source;
}

/** How near supply and exhaust must be to count as balanced. */
export interface BalanceLimit {
  /** A share of the supply, or of supply and exhaust together. */
  readonly of: "supply" | "sum";
  readonly within: number;
  /** A difference of this flow always counts as balanced. */
  readonly orFlow?: Rate;
  /** The other definition, of an edition that has two. */
  readonly also?: BalanceLimit;
  readonly source: Source;
}

/** How far a measured flow may lie from its design, up or down: the larger of the two. */
export interface DesignTolerance {
  readonly within: Rate;
  readonly share: number;
  readonly source: Source;
}
