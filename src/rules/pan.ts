import { oneValue } from "../algebra";
import { panCode, type Source } from "../formulas";
import { repeats } from "../spread";

/** The closed box held over a register as a pressure pan, the house held at a pressure. */
export const panStatuses = ["tight", "leaks", "repeat"] as const;
export type PanStatus = (typeof panStatuses)[number];

const practice = (clause: string): Source => ({
  work: "pressure pan over a register",
  clause,
  mark: "common practice",
});

/** What the trade does where the job sets nothing of its own. */
export const usualPan = {
  house: {
    what: "house pressure while the pan is read",
    value: 50,
    unit: "Pa",
    source: practice("the house held away from outdoors by a blower door"),
  },
  limit: {
    what: "pan reading up to which a register's duct is tight",
    value: 1,
    unit: "Pa",
    source: practice("set by the job"),
  },
  span: {
    what: "most that readings of one register may differ",
    value: 0.5,
    unit: "Pa",
    source: practice("set by the job; twice a manometer's limit of 0.25 Pa"),
  },
} as const satisfies Record<string, { source: Source; value: number; what: string; unit: string }>;

export interface PanReading {
  readonly mean: number;
  /** The largest reading less the smallest: the repeatability. 0 for one reading. */
  readonly span: number;
  readonly count: number;
}

/** What the readings of one register, Pa, say together; undefined where there is none. */
export function panReading(readings: readonly number[]): PanReading | undefined {
  if (readings.length === 0) return undefined;
  const { mean, n } = repeats(readings);
  return { mean, span: Math.max(...readings) - Math.min(...readings), count: n };
}

/** Readings written to a tenth of a pascal differ by 0.5 Pa when the machine says 0.5000000000001. */
const hair = 1e-9;

/**
 * Whether the duct behind a register is tight. Both limits belong to "tight"; the sign of the
 * readings does not count, since it says only which way the house is held. Undefined where nothing
 * was read.
 */
export function panStatus(
  readings: readonly number[],
  limit: number = usualPan.limit.value,
  span: number = usualPan.span.value,
): PanStatus | undefined {
  const read = panReading(readings);
  if (!read) return undefined;
  const code = oneValue(panCode, {
    m: read.mean,
    s: read.span,
    limit: limit * (1 + hair),
    most: span * (1 + hair),
  });
  return panStatuses[code];
}
