import { oneValue } from "../algebra";
import { fixed, InputError } from "../cells";
import { flowFromPressure, openingStrength } from "../formulas";
import {
  type Agreement,
  agreement,
  agreementFactor,
  nextFactor,
  percentDifferences,
  throughOrigin,
} from "../spread";
import { usualWindow } from "./constants";

/** One paired reading: the box, and straight after it the reference, of one fan at one setting. */
export interface ProofPair {
  /** The opening or openings in use, as labelled. */
  readonly opening: string;
  /** Open area (in² or cm²), box pressure (Pa) and reference flow (cfm or L/s), each above 0. */
  readonly area: number;
  readonly pressure: number;
  readonly reference: number;
}

interface ProofOptions {
  /** Standard spread of the reference itself, %. */
  readonly referenceSpread: number;
  /** The constant in use; the one fitted to these very pairs where left out. */
  readonly constant?: number | undefined;
  /** The written accuracy that the box is to meet, % of reading; 10 where left out. */
  readonly requirement?: number | undefined;
  readonly window?: { readonly low: number; readonly high: number } | undefined;
}

/** How much of an opening's window the pairs span. */
export interface Coverage {
  readonly opening: string;
  readonly pairs: number;
  /** Lowest and highest pressure of its pairs, Pa. */
  readonly low: number;
  readonly high: number;
  /** Part of the window between them, 0 to 1. */
  readonly share: number;
}

export const proofVerdicts = ["proved", "not proved", "too few pairs"] as const;
export type ProofVerdict = (typeof proofVerdicts)[number];

export interface Proof {
  readonly verdict: ProofVerdict;
  /** Why, as sentences. */
  readonly reasons: readonly string[];
  /** The constant that the pairs give, its standard error and the spread with the reference's. */
  readonly constant: {
    readonly value: number;
    readonly standardError: number;
    readonly u: number;
    readonly dof: number;
  };
  /** Errors of the box in percent of the reference, by the constant in use. */
  readonly errors: Agreement;
  readonly pairs: number;
  /** Flows that differ by more than a repeat does. */
  readonly flows: number;
  readonly coverage: readonly Coverage[];
  /** Whether the reference's own spread leaves room for the requirement. */
  readonly referenceAllows: boolean;
  readonly requirement: number;
}

/** ±10 % of reading or better: California Reference Appendix RA3.7.2.2 (two sources). */
export const usualRequirement = 10;

/** Fewer flows say nothing of the range between them: common practice. */
export const leastFlows = 5;

/** Reference flows within so many percent of each other are repeats of one: common practice. */
const repeatPercent = 5;

/**
 * What paired readings prove of a box: its constant, how far it is off, and whether it meets a
 * written accuracy.
 *
 * "Proved" asks that no single error, and neither limit for the next reading widened by the
 * reference's own spread, is beyond the requirement. A box cannot be proved better than its reference. What is
 * proved holds for the pressures and openings of the pairs.
 *
 * Throws an InputError where there is no pair.
 */
export function proof(pairs: readonly ProofPair[], options: ProofOptions): Proof {
  if (pairs.length === 0) throw new InputError("no pair: a box is proved by paired readings");
  const { referenceSpread, requirement = usualRequirement, window = usualWindow } = options;
  const references = pairs.map(({ reference }) => reference);
  const strengths = pairs.map(({ area: A, pressure: P }) => oneValue(openingStrength, { A, P }));
  const fit = throughOrigin(strengths, references);
  const K = options.constant ?? fit.slope;
  const measured = pairs.map(({ area: A, pressure: P }) => oneValue(flowFromPressure, { K, A, P }));
  const errors = agreement(percentDifferences(measured, references));
  const known = {
    constant: {
      value: fit.slope,
      standardError: fit.slopeError,
      u: Math.hypot(fit.slopeError, (fit.slope * referenceSpread) / 100),
      dof: fit.dof,
    },
    errors,
    pairs: pairs.length,
    flows: countFlows(references),
    coverage: coverageOf(pairs, window),
    referenceAllows: agreementFactor * referenceSpread < requirement,
    requirement,
  };
  return { ...judge(known, referenceSpread), ...known };
}

type Known = Omit<Proof, "verdict" | "reasons">;

function judge(
  known: Known,
  referenceSpread: number,
): { verdict: ProofVerdict; reasons: readonly string[] } {
  const { errors, flows, requirement } = known;
  const against: string[] = [];
  if (!known.referenceAllows)
    against.push(
      `The reference is itself good to ±${percent(agreementFactor * referenceSpread)} only, which leaves no room for ±${percent(requirement)}: this proof says nothing against the box; prove it again with a better reference.`,
    );
  if (errors.largest > requirement)
    against.push(
      `The largest error is ${percent(errors.largest)}, beyond ±${percent(requirement)}.`,
    );
  const reach = Math.hypot(errors.sd * nextFactor(errors.n), referenceSpread * agreementFactor);
  const [low, high] = [errors.bias - reach, errors.bias + reach];
  const next = `The next reading, with the spread of the reference, lies from ${percent(low)} to ${percent(high)} in 95 of 100 cases (limits of agreement of these pairs alone: ${percent(errors.low)} to ${percent(errors.high)})`;
  if (known.referenceAllows && (low < -requirement || high > requirement))
    against.push(`${next}: beyond ±${percent(requirement)}.`);
  const spans = known.coverage.map(
    ({ opening, low, high, share }) =>
      `Opening ${opening} was read from ${digits(low)} to ${digits(high)} Pa, ${percent(100 * share, 0)} of its window; nothing is proved outside that.`,
  );
  if (flows < leastFlows)
    return {
      verdict: "too few pairs",
      reasons: [
        `There ${flows === 1 ? "is 1 flow" : `are ${flows} flows`} that differ by more than ${repeatPercent} %; ${leastFlows} are needed.`,
        ...against,
        ...spans,
      ],
    };
  if (against.length > 0) return { verdict: "not proved", reasons: [...against, ...spans] };
  return {
    verdict: "proved",
    reasons: [
      `${next}, and no error is larger than ${percent(errors.largest)}: within ±${percent(requirement)}.`,
      ...spans,
    ],
  };
}

function coverageOf(
  pairs: readonly ProofPair[],
  window: { readonly low: number; readonly high: number },
): Coverage[] {
  const openings = [...new Set(pairs.map(({ opening }) => opening))];
  return openings.map((opening) => {
    const pressures = pairs.filter((pair) => pair.opening === opening).map((pair) => pair.pressure);
    const [low, high] = [Math.min(...pressures), Math.max(...pressures)];
    const inside = Math.min(high, window.high) - Math.max(low, window.low);
    const share = Math.max(0, inside) / (window.high - window.low);
    return { opening, pairs: pressures.length, low, high, share };
  });
}

/** Flows from low to high, a new one wherever it is out of reach of the first of its kind. */
function countFlows(references: readonly number[]): number {
  let count = 0;
  let first = 0;
  for (const flow of [...references].sort((a, b) => a - b)) {
    if (count > 0 && flow <= first * (1 + repeatPercent / 100)) continue;
    count++;
    first = flow;
  }
  return count;
}

const digits = (value: number, places = 1): string => fixed(value, places);
const percent = (value: number, places = 1): string => `${digits(value, places)} %`;
