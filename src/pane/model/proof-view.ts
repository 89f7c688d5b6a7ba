import { isoDay, shown } from "../../cells";
import {
  type BoxProof,
  boxProofs,
  constantInUse,
  type Job,
  type ProofVerdict,
  reachOf,
} from "../../job";
import { count } from "./announce";
import { digits, percentOf, signedPercent } from "./in-words";

/** One paired reading, as the picture and its twin show it. */
export interface PairView {
  readonly opening: string;
  readonly pressure: number;
  readonly box: number;
  readonly reference: number;
  /** "+1.2 %" */
  readonly difference: string;
}

export interface CoverageView {
  readonly opening: string;
  /** Where the pairs begin and end in the window, 0 to 1. */
  readonly from: number;
  readonly to: number;
  /** "1.3 to 7.6 Pa, 90 %, 5 pairs" */
  readonly words: string;
}

export interface ProofView {
  readonly box: string;
  readonly verdict: ProofVerdict;
  readonly reasons: readonly string[];
  /** What the pairs come to, as names and values. */
  readonly figures: readonly { readonly name: string; readonly value: string }[];
  readonly coverage: readonly CoverageView[];
  readonly pairs: readonly PairView[];
  /** The reference is too weak to prove anything, for or against. */
  readonly isWeak: boolean;
  /** Written accuracy asked for, per cent. */
  readonly requirement: number;
}

/**
 * The proof of a box from the job's Pairs sheet; undefined where it has no pairs. `today` is a
 * serial number of the workbook.
 */
export function proofView(job: Job, box: string, today: number): ProofView | undefined {
  const own = boxProofs(job).get(box.toUpperCase());
  if (!own) return undefined;
  const { proof } = own;
  return {
    box: own.box,
    verdict: proof.verdict,
    isWeak: !proof.referenceAllows,
    // The last reasons say of each opening how far it was read, which its bar says too.
    reasons: proof.reasons.slice(0, proof.reasons.length - proof.coverage.length),
    figures: figuresOf(job, own, today),
    coverage: coverageOf(job, own),
    pairs: pairsOf(job, own),
    requirement: proof.requirement,
  };
}

/** The round number at which both axes of a picture of these pairs end. */
export function axisEnd(pairs: readonly PairView[]): number {
  const most = 1.05 * Math.max(...pairs.flatMap(({ box, reference }) => [box, reference]));
  const step = 10 ** Math.floor(Math.log10(most)) / 2;
  return Math.ceil(most / step) * step;
}

function figuresOf(job: Job, own: BoxProof, today: number): ProofView["figures"] {
  const { proof, referenceSpread, references } = own;
  const { constant, errors } = proof;
  const each = Number.isNaN(errors.limitError)
    ? ""
    : `, each known to about ±${digits(1.96 * errors.limitError, 2)} %`;
  return [
    { name: "Constant", value: `${digits(constantInUse(job, own.box), 4)} in use` },
    {
      name: "By the pairs",
      value: Number.isNaN(constant.u)
        ? digits(constant.value, 4)
        : `${digits(constant.value, 4)}, u ${digits(constant.u, 2)} with the reference's own`,
    },
    { name: "Bias", value: signedPercent(errors.bias) },
    {
      name: "Limits of agreement",
      value: Number.isNaN(errors.low)
        ? "need two pairs or more"
        : `${signedPercent(errors.low)} to ${signedPercent(errors.high)}${each}`,
    },
    { name: "Largest error", value: `${digits(errors.largest, 2)} %` },
    { name: "Pairs", value: `${proof.pairs}, at ${proof.flows} flows that differ` },
    {
      name: "Reference",
      value: [
        references.length === 0 ? "none named" : references.join(", "),
        Number.isNaN(referenceSpread)
          ? "its limit is not on the Instruments sheet"
          : `u ${digits(referenceSpread, 2)} %`,
      ].join("; "),
    },
    ...datesOf(job, own, today),
  ];
}

function datesOf({ settings, file }: Job, { date }: BoxProof, today: number) {
  const proved = isoDay(date, file.dateOffset);
  if (proved === "") return [{ name: "Date", value: "no day stated" }];
  const end = date + settings.interval;
  const expires = isoDay(end, file.dateOffset);
  return [
    { name: "Date", value: proved },
    {
      name: today > end ? "Expired" : "Expires",
      value: `${expires}, after ${settings.interval} days`,
    },
  ];
}

function coverageOf({ settings }: Job, { proof }: BoxProof): CoverageView[] {
  const { low: least, high: most } = settings;
  const place = (pressure: number) => Math.min(1, Math.max(0, (pressure - least) / (most - least)));
  return proof.coverage.map(({ opening, pairs, low, high, share }) => ({
    opening,
    from: place(low),
    to: place(high),
    words: `${shown(low)} to ${shown(high)} Pa, ${percentOf(Math.round(100 * share) / 100)}, ${count(pairs, "pair")}`,
  }));
}

function pairsOf(job: Job, own: BoxProof): PairView[] {
  const constant = constantInUse(job, own.box);
  return own.pairs.map(({ opening, area, pressure, reference }) => {
    const { lowest: box } = reachOf(area, constant, { low: pressure, high: pressure });
    return {
      opening,
      pressure,
      box,
      reference,
      difference: signedPercent((100 * (box - reference)) / reference),
    };
  });
}
