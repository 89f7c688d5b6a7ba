import { oneValue, plain } from "../../algebra";
import { panCode, type Source } from "../../formulas";
import { repeats } from "../../spread";
import { ifGiven, optional, type RepeatsArgument } from "../contract/argument";
import type { Help } from "../contract/help";
import { aboveZero } from "../contract/need";
import { rule as ruleOf } from "../contract/rule";
import { sixDigits } from "../contract/say";
import type { NativeForm } from "../native/native";
import { readings } from "../native/readings";
import { digits } from "../native/text";
import { type PanStatus, panStatuses } from "../outcomes";

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
const roundOff = 1e-9;

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
    limit: limit * (1 + roundOff),
    most: span * (1 + roundOff),
  });
  return panStatuses[code];
}

const pan: RepeatsArgument = { kind: "repeats" };

export const rule = ruleOf({
  id: "PAN_STATUS",
  title: "Whether the duct behind a register is tight",
  arguments: {
    readings: pan,
    limit: optional(ifGiven(aboveZero)),
    span: optional(ifGiven(aboveZero)),
  },
  formulas: [panCode],
  work({ readings, limit = usualPan.limit.value, span = usualPan.span.value }) {
    const told = () => {
      const { mean, span: apart } = panReading(readings) as PanReading;
      return `mean ${sixDigits(mean)} Pa against ${sixDigits(limit)} Pa either way; readings ${sixDigits(apart)} Pa apart, at most ${sixDigits(span)} Pa allowed`;
    };
    return {
      gives: panStatus(readings, limit, span) ?? "",
      why: () => ({ words: [told()], sources: [usualPan.limit.source, usualPan.span.source] }),
    };
  },
});

export const native: NativeForm = (native) => {
  const { mean: m, span: s } = readings(native, false);
  const [limit, most] = (["limit", "span"] as const).map(
    (name) => `(${native.or(name, digits(usualPan[name].value))}*(1+1E-9))`,
  ) as [string, string];
  return `CHOOSE(1+${plain(panCode, { m, s, limit, most })},"tight","leaks","repeat")`;
};

export const help: Help = {
  computes: [
    "The closed box serves as a pan over a register while the house is held 50 Pa away from outdoors. A tight duct leaves the pan near 0 Pa; a leak to outdoors pulls it up.",
    "The mean of the readings is judged, whatever its sign; readings further apart than the span are to be taken again. A mean at the limit is tight.",
    "Limit and span are common practice and set by the job: no text read states them.",
  ],
  result: '"tight", "leaks" or "repeat"; blank where nothing was read.',
  formulas: [panCode],
  examples: [
    {
      words: "The pan stands at 1.4 Pa, above the usual limit of 1 Pa.",
      args: [1.4],
      gives: "leaks",
    },
  ],
  troubles: [
    { when: "A reading was typed with its unit.", args: ["1.4 Pa"] },
    { when: "The limit is below 0.", args: [1.4, -1] },
  ],
  related: ["RANGE_STATUS", "DEVICE_FLOW"],
};
