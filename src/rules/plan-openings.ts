import { oneValue } from "../algebra";
import { InputError } from "../cells";
import { areaForFlow, diameterForArea, flowFromPressure, roundArea } from "../formulas";
import { usualWindow } from "./range-status";

/** The flows that one opening reads inside its window. */
export interface Reach {
  readonly lowest: number;
  readonly highest: number;
}

/** The reach of an open area, in the flow unit of the constant. */
export function reachOf(area: number, constant: number, window: Window = usualWindow): Reach {
  const at = (P: number) => oneValue(flowFromPressure, { K: constant, A: area, P });
  return { lowest: at(window.low), highest: at(window.high) };
}

interface Window {
  readonly low: number;
  readonly high: number;
}

export interface OpeningPlan {
  readonly label: string;
  /** Of a round hole, in the length unit that belongs to the area; rounded to `step`. */
  readonly diameter: number;
  readonly area: number;
  readonly reach: Reach;
}

/** The most openings that a box is planned with: more do not fit one face. */
export const mostPlanned = 8;

/**
 * The fewest round openings, each used alone, that together read every flow from `least` to
 * `most`, with neighbours overlapping by at least `overlap` (a share, 0.1 usual).
 *
 * `step` is the fineness of the tool: diameters are rounded down to it, so that the reach still
 * begins at `least` or below. Throws an InputError that says what to change where more than eight
 * would be needed.
 */
export function planOpenings(
  least: number,
  most: number,
  constant: number,
  options: { readonly step?: number; readonly overlap?: number; readonly window?: Window } = {},
): OpeningPlan[] {
  const { step = 1 / 16, overlap = 0.1, window = usualWindow } = options;
  if (!(least > 0) || !(most > least))
    throw new InputError(
      `from ${least} to ${most}: give a lowest flow above 0 and a higher highest`,
    );
  const plan: OpeningPlan[] = [];
  let from = least;
  while (plan.length < mostPlanned) {
    const area = oneValue(areaForFlow, { Q: from, P: window.low, K: constant });
    const exact = oneValue(diameterForArea, { A: area });
    const diameter = Math.max(step, Math.floor(exact / step + 1e-9) * step);
    const rounded = oneValue(roundArea, { d: diameter });
    const reach = reachOf(rounded, constant, window);
    plan.push({
      label: String.fromCharCode(65 + plan.length),
      diameter,
      area: rounded,
      reach,
    });
    if (reach.highest >= most) return plan;
    const next = reach.highest / (1 + overlap);
    if (next <= from) break;
    from = next;
  }
  throw new InputError(
    `more than ${mostPlanned} openings would be needed: narrow the flow range, the overlap or the step`,
  );
}

/** Openings used alone leave these flows unread, between the lowest and the highest reach. */
export function gapsBetween(reaches: readonly Reach[]): Reach[] {
  const sorted = [...reaches].sort((a, b) => a.lowest - b.lowest);
  const gaps: Reach[] = [];
  let upTo = sorted[0]?.highest ?? 0;
  for (const { lowest, highest } of sorted.slice(1)) {
    if (lowest > upTo) gaps.push({ lowest: upTo, highest: lowest });
    upTo = Math.max(upTo, highest);
  }
  return gaps;
}

/**
 * Above this share of the box face, the air's approach to the opening raises the flow by more
 * than 3.3 % (β = 0.5 in the approach factor, ISO 5167-1).
 */
export const mostOfFace = 0.25;

/** Inches as a workshop writes them: 4 3/16. Rounded to the nearest sixteenth. */
export function inSixteenths(inches: number): string {
  const sixteenths = Math.round(inches * 16);
  const whole = Math.floor(sixteenths / 16);
  let top = sixteenths % 16;
  let bottom = 16;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  if (top === 0) return String(whole);
  return whole > 0 ? `${whole} ${top}/${bottom}` : `${top}/${bottom}`;
}
