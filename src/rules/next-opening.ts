import { oneValue } from "../algebra";
import { areaAtPressure, pressureAtOtherArea } from "../formulas";
import { areaOf, type Opening } from "./openings-label";
import { usualWindow } from "./range-status";

/** The pressure to aim for, Pa: inside the 3 to 6 Pa where the manometer's limit hurts least. */
export const aimedPressure = 4;

/** Sets are tried of so many openings at most; a box with more is tried one and two at a time. */
const mostCombined = 10;

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
  const sets = setsOf(box);
  const aimed = oneValue(areaAtPressure, { A: area, P: pressure, P2: aimedPressure });
  const above = sets.findIndex((set) => set.area >= aimed);
  const at = above < 0 ? sets.length : above;
  // On each side of the aimed area the nearest set is the best of that side.
  const sides = [sets[at - 1], sets[at]].flatMap((set) => {
    if (!set) return [];
    const expected = oneValue(pressureAtOtherArea, { P: pressure, A: area, A2: set.area });
    const inWindow = expected >= window.low && expected <= window.high;
    return [{ label: set.label, area: set.area, pressure: expected, inWindow }];
  });
  const distance = (set: NextOpening) => Math.abs(Math.log(set.pressure / aimedPressure));
  return sides.sort(
    (a, b) => Number(b.inWindow) - Number(a.inWindow) || distance(a) - distance(b),
  )[0];
}

interface OpeningSet {
  readonly label: string;
  readonly area: number;
}

const known = new WeakMap<readonly Opening[], readonly OpeningSet[]>();

/** The sets of openings that a box allows, by area; of equal areas the one with fewest openings. */
function setsOf(box: readonly Opening[]): readonly OpeningSet[] {
  let sets = known.get(box);
  if (!sets) {
    const all = combinations(box.filter((opening) => opening.area > 0))
      .map((set) => ({
        label: set.map((opening) => opening.label).join("+"),
        area: areaOf(set),
        count: set.length,
      }))
      .sort((a, b) => a.area - b.area || a.count - b.count);
    sets = all.filter((set, i) => i === 0 || set.area > (all[i - 1]?.area ?? 0) * (1 + 1e-9));
    known.set(box, sets);
  }
  return sets;
}

function combinations(box: readonly Opening[]): Opening[][] {
  if (box.length > mostCombined)
    return box.flatMap((first, i) => [
      [first],
      ...box.slice(i + 1).map((second) => [first, second]),
    ]);
  const all: Opening[][] = [];
  for (let bits = 1; bits < 1 << box.length; bits++)
    all.push(box.filter((_, i) => bits & (1 << i)));
  return all;
}
