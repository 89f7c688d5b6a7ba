import type { DeficitRule, DwellingRule } from "./dwelling";
import type * as equipment from "./equipment";
import type { CreditRule, InfiltrationRule } from "./infiltration";
import type { System } from "./rate";
import type { RoomRule } from "./room";
import type { CycleRule, RunTimeRule } from "./run-time";

/** One edition of a standard, code or programme, as data. What it does not set is left out. */
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
  readonly efficacy?: { readonly rows: readonly equipment.EfficacyRow[] };
  readonly sound?: equipment.SoundLimit;
  readonly ducts?: equipment.DuctTable;
  readonly makeupAir?: equipment.MakeupAirLimit;
  readonly balanced?: equipment.BalancedCredit;
  readonly balance?: equipment.BalanceLimit;
  readonly designMatch?: equipment.DesignTolerance;
  readonly notes: readonly string[];
}

/** An edition with what most leave out filled in. */
export function edition(
  id: string,
  title: string,
  system: System,
  rest: Partial<Omit<Edition, "id" | "title">>,
): Edition {
  return { id, title, aliases: [], systems: [system], rooms: [], dwelling: [], notes: [], ...rest };
}
