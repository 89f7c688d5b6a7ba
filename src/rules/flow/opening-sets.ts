import { once } from "../../cells";
import { areaOf, type Opening } from "../openings/openings-label";

/** Every set is tried of so many openings at most; a box with more is tried one and two at a time. */
const mostCombined = 10;

interface OpeningSet {
  readonly label: string;
  readonly area: number;
}

/** Areas nearer than this are one and the same. */
const same = 1 + 1e-9;

/** The sets of openings whose areas are nearest to `aimed`: one below it and one not below it. */
export function setsAround(box: readonly Opening[], aimed: number): OpeningSet[] {
  if (box.length > mostCombined) return aroundInMany(byArea(box), aimed);
  const sets = setsOf(box);
  const above = sets.findIndex((set) => set.area >= aimed);
  const at = above < 0 ? sets.length : above;
  return [sets[at - 1], sets[at]].filter((set) => set !== undefined);
}

/** By area; of equal areas the one with fewest openings. */
const setsOf = once((box: readonly Opening[]): readonly OpeningSet[] => {
  const all = combinations(box.filter((opening) => opening.area > 0))
    .map((set) => ({ ...setOf(...set), count: set.length }))
    .sort((a, b) => a.area - b.area || a.count - b.count);
  return all.filter((set, i) => i === 0 || set.area > (all[i - 1]?.area ?? 0) * same);
});

function combinations(box: readonly Opening[]): Opening[][] {
  const all: Opening[][] = [];
  for (let bits = 1; bits < 1 << box.length; bits++)
    all.push(box.filter((_, i) => bits & (1 << i)));
  return all;
}

/** The openings of a box with many. */
const byArea = once((box: readonly Opening[]) =>
  box.filter(({ area }) => area > 0).sort((a, b) => a.area - b.area),
);

/**
 * The nearest of single openings and pairs. From both ends of the sorted openings inward, every
 * pair that can be nearest is passed once.
 */
function aroundInMany(box: readonly Opening[], aimed: number): OpeningSet[] {
  let below: Opening[] = [];
  let above: Opening[] = [];
  const see = (...set: Opening[]) => {
    const area = areaOf(set);
    if (area >= aimed) {
      if (above.length === 0 || area * same < areaOf(above)) above = set;
    } else if (below.length === 0 || area > areaOf(below) * same) below = set;
  };
  for (const opening of box) see(opening);
  for (let i = 0, j = box.length - 1; i < j; ) {
    const [low, high] = [box[i] as Opening, box[j] as Opening];
    see(low, high);
    if (low.area + high.area >= aimed) j--;
    else i++;
  }
  return [below, above].flatMap((set) => (set.length > 0 ? [setOf(...set)] : []));
}

function setOf(...set: readonly Opening[]): OpeningSet {
  return { label: set.map(({ label }) => label).join("+"), area: areaOf(set) };
}
