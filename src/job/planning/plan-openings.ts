import { oneValue } from "../../algebra";
import { columnLetters, InputError, shown } from "../../cells";
import type { System } from "../../editions";
import { areaForFlow, rectArea, roundArea } from "../../formulas";
import { mostOfFace, type Reach, reachOf, usualWindow } from "../../rules";
import { unitOf } from "../columns";
import { attempt } from "../read/maybe";
import { approachError, type BoxFace, layOut, type PlacedHole, widestHole } from "./box-face";

/** One opening of a planned box: one hole, or several equal ones that are opened together. */
export interface OpeningPlan {
  readonly label: string;
  readonly shape: "round" | "rectangular";
  /** Diameter, or side of a square, in the length unit that belongs to the area. */
  readonly size: number;
  readonly count: number;
  /** Of all its holes. */
  readonly area: number;
  readonly reach: Reach;
}

export interface BoxPlan {
  readonly openings: readonly OpeningPlan[];
  /** Where each hole goes on the face; undefined where no face is given. */
  readonly holes: readonly PlacedHole[] | undefined;
  /** How much too high the flow through the largest opening reads for want of face, as a share. */
  readonly approach: number | undefined;
}

interface PlanOptions {
  readonly shape?: "round" | "square";
  /** Sizes are rounded down to this, so that the reach still begins at the lowest flow. */
  readonly step?: number;
  /** Only these diameters can be cut. */
  readonly saws?: readonly number[] | undefined;
  /** Share by which neighbours overlap. */
  readonly overlap?: number;
  readonly window?: { readonly low: number; readonly high: number };
  readonly face?: BoxFace | undefined;
  /** In whose units the refusals are worded. */
  readonly system?: System;
}

/** A length as a workshop takes it: inches, or millimetres. */
const lengthIn = (system: System, length: number) =>
  system === "ip" ? `${shown(length)} in` : `${shown(10 * length)} mm`;

/** The most openings that a box is planned with: more are not kept apart in the hand. */
const mostPlanned = 8;
/** The most equal holes for one opening. */
const mostHoles = 6;

/**
 * The fewest openings, each used alone, that together read every flow from `least` to `most`.
 *
 * Throws an InputError that says what to change: a flow range that needs more than eight, a hole
 * wider than the face, an opening of more than a quarter of it, holes that do not fit side by side.
 */
export function planOpenings(
  least: number,
  most: number,
  constant: number,
  options: PlanOptions = {},
): BoxPlan {
  const planned = (apart: number) => planApart(apart, least, most, constant, options);
  const apart = attempt(() => planned(leastApart));
  return "value" in apart ? apart.value : planned(1);
}

/** The last opening has so many times the area of the one before, where the face has room for it. */
const leastApart = 1.5;

function planApart(
  apart: number,
  least: number,
  most: number,
  constant: number,
  options: PlanOptions,
): BoxPlan {
  const { overlap = 0.1, window = usualWindow, face, system = "ip" } = options;
  if (!(least > 0) || !(most > least))
    throw new InputError(
      `from ${shown(least)} to ${shown(most)}: give a lowest flow above 0 and a higher highest`,
    );
  const openings: OpeningPlan[] = [];
  let from = least;
  while (openings.length < mostPlanned && from < most) {
    const label = columnLetters(openings.length);
    const area = oneValue(areaForFlow, { Q: from, P: window.low, K: constant });
    const enough = Math.max(
      oneValue(areaForFlow, { Q: most, P: window.high, K: constant }),
      apart * (openings.at(-1)?.area ?? 0),
    );
    const cut = lastCut(enough, area, options) ?? cutFor(area, options);
    if (!cut)
      throw new InputError(
        `no hole that can be cut gives ${shown(area)} ${unitOf("opening", system)} of area for ${shown(from)} ${unitOf("flow", system)}: raise the lowest flow, or choose a finer tool`,
      );
    const opening = { label, ...cut, reach: reachOf(cut.area, constant, window) };
    openings.push(opening);
    if (face) refuseTooLarge(opening, face, system);
    if (opening.reach.highest >= most) return { openings, ...onFace(openings, options) };
    const next = opening.reach.highest / (1 + overlap);
    if (next <= from) break;
    from = next;
  }
  throw new InputError(
    `more than ${mostPlanned} openings would be needed: narrow the flow range, the overlap or the step`,
  );
}

type Cut = Pick<OpeningPlan, "shape" | "size" | "count" | "area">;

/** The smallest cut that still reads the highest flow, where that is below the area allowed. */
function lastCut(enough: number, allowed: number, options: PlanOptions): Cut | undefined {
  for (let area = enough; area < allowed; area *= 1.004) {
    const cut = cutFor(area, options);
    if (cut && cut.area >= enough) return cut;
  }
  return undefined;
}

/** The fewest holes that come close to an area from below. */
function cutFor(
  area: number,
  { shape = "round", step = 1 / 16, saws, face }: PlanOptions,
): Cut | undefined {
  const areaOf = (size: number) =>
    shape === "round" ? oneValue(roundArea, { d: size }) : oneValue(rectArea, { w: size, h: size });
  const widest = face ? widestHole(face) : Number.POSITIVE_INFINITY;
  let best: Cut | undefined;
  for (let count = 1; count <= mostHoles; count++) {
    const exact = Math.sqrt(area / count / areaOf(1));
    const wanted = Math.min(exact, widest);
    const size = saws
      ? saws.findLast((saw) => saw <= wanted + 1e-9)
      : Math.floor(wanted / step + 1e-9) * step;
    if (size === undefined || !(size > 0)) continue;
    const cut: Cut = {
      shape: shape === "round" ? "round" : "rectangular",
      size,
      count,
      area: count * areaOf(size),
    };
    if (!best || cut.area > best.area * (1 + leastGain)) best = cut;
  }
  return best;
}

/** One hole more has to bring this share of area, or it is not worth its edge. */
const leastGain = 0.08;

function refuseTooLarge({ label, area, reach }: OpeningPlan, face: BoxFace, system: System): void {
  const share = area / (face.width * face.height);
  if (share <= mostOfFace) return;
  const wanted = Math.sqrt(area / mostOfFace);
  const percent = 100 * approachError(area, face);
  const high = Number.isFinite(percent) ? `read ${shown(percent)} % high` : "not be a hole at all";
  throw new InputError(
    `opening ${label} for flows up to ${shown(reach.highest)} ${unitOf("flow", system)} would take ${shown(100 * share)} % of the face and ${high}: use a face of at least ${lengthIn(system, wanted)} by ${lengthIn(system, wanted)}, or lower the highest flow`,
  );
}

function onFace(
  openings: readonly OpeningPlan[],
  { face, shape = "round", system = "ip" }: PlanOptions,
): Pick<BoxPlan, "holes" | "approach"> {
  if (!face) return { holes: undefined, approach: undefined };
  const holes = openings.flatMap(({ label, size, count }) =>
    Array.from({ length: count }, () => ({ opening: label, size })),
  );
  const placed = layOut(holes, face, shape);
  if (!placed)
    throw new InputError(
      `the ${holes.length} holes do not fit on the face with ${lengthIn(system, face.rim)} between them: use a larger face, a smaller rim, or fewer flows`,
    );
  const approach = Math.max(...openings.map(({ area }) => approachError(area, face)));
  return { holes: placed, approach };
}
