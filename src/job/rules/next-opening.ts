import { oneValue } from "../../algebra";
import { pressureAtOtherArea } from "../../formulas";
import { areaOf, type Opening } from "./openings-label";
import { usualWindow } from "./range-status";

/** The pressure to aim for, Pa: inside the 3 to 6 Pa where the manometer's limit hurts least. */
export const aimedPressure = 4;

/** A box with more openings than this would have too many sets to try. */
export const mostOpenings = 12;

export interface NextOpening {
  /** "A" or "A+C". */
  readonly label: string;
  readonly area: number;
  /** The pressure to expect, Pa, if the fan keeps its flow. */
  readonly pressure: number;
  /** False when no set of openings brings the box into the window; then this is the nearest. */
  readonly inWindow: boolean;
}

/**
 * The opening, or set of openings, to use next: the one whose expected pressure is nearest to the
 * aimed one by ratio; of equals the one with fewer openings.
 *
 * `area` and the areas of `box` share a unit. `pressure` in Pa above 0. Undefined for a box
 * without openings.
 */
export function nextOpening(
  pressure: number,
  area: number,
  box: readonly Opening[],
  window: { readonly low: number; readonly high: number } = usualWindow,
): NextOpening | undefined {
  let best: NextOpening | undefined;
  let bestDistance = Number.POSITIVE_INFINITY;
  for (const set of sets(box.slice(0, mostOpenings))) {
    const total = areaOf(set);
    const expected = oneValue(pressureAtOtherArea, { P: pressure, A: area, A2: total });
    const inWindow = expected >= window.low && expected <= window.high;
    const distance = Math.abs(Math.log(expected / aimedPressure)) + (inWindow ? 0 : 100);
    if (distance < bestDistance - 1e-9) {
      best = {
        label: set.map((opening) => opening.label).join("+"),
        area: total,
        pressure: expected,
        inWindow,
      };
      bestDistance = distance;
    }
  }
  return best;
}

/** Every set of one or more openings, small sets first. */
function sets(box: readonly Opening[]): Opening[][] {
  const all: Opening[][] = [];
  for (let bits = 1; bits < 1 << box.length; bits++)
    all.push(box.filter((_, i) => bits & (1 << i)));
  return all.sort((a, b) => a.length - b.length);
}
