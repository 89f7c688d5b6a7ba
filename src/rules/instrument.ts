import type { Rate } from "../editions";
import type { Source } from "../formulas";

export const instrumentNames = [
  "manometer",
  "powered hood",
  "passive hood",
  "direct entry",
  "timed bag",
  "range device",
] as const;
export type InstrumentName = (typeof instrumentNames)[number];

/** How far an instrument may be off, as a standard or guide states it. Where several do, each is kept. */
export interface InstrumentLimit {
  readonly what: string;
  /** Per cent of the reading, from the lower to the upper where a range is stated. */
  readonly percent?: number;
  readonly upToPercent?: number;
  /** The least limit, in Pa or in the flow units in which it is stated; it is never converted. */
  readonly floorPressure?: number;
  readonly floorFlow?: Rate;
  /** Seen in the field, where the others are what an instrument must keep. */
  readonly found?: true;
  readonly source: Source;
}

/** A number of the procedure: repeats, or a pressure to hold. */
export interface Procedure {
  readonly what: string;
  readonly value: number;
  readonly unit: string;
  readonly source: Source;
}

export interface Caution {
  readonly words: string;
  readonly source: Source;
}

/** One kind of instrument. Every one turns its reading into a flow by constant × reading ^ exponent. */
export interface Instrument {
  readonly name: InstrumentName;
  readonly words: readonly string[];
  /** What is read, with its unit. */
  readonly reads: string;
  /** Undefined where the device's own record states it. */
  readonly exponent?: number;
  /** Undefined where it depends on the device, the opening or the bag. */
  readonly constant?: number;
  /** Where exponent and constant come from. */
  readonly source: Source;
  readonly limits: readonly InstrumentLimit[];
  readonly procedure: readonly Procedure[];
  readonly cautions: readonly Caution[];
}
