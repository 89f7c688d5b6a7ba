import { expectedOpening, type Opening, reachOf, type Settings } from "../../job";

/** The most sets that stand side by side on a card that can be read from a ladder. */
const mostSets = 9;
/** Flows tried between the least and the most that the box reads. */
const trials = 120;

/** Openings that are used together, with their area. */
export interface OpeningSet {
  readonly label: string;
  readonly area: number;
}

/**
 * Each opening by itself, and the sets that are the best choice for some flow inside the window:
 * smallest area first. Where that is too much for a card, some of the sets are left out.
 */
export function usefulSets(
  box: readonly Opening[],
  constant: number,
  window: Pick<Settings, "low" | "high">,
): OpeningSet[] {
  const sets = new Map<string, OpeningSet>(box.map((opening) => [opening.label, opening]));
  const areas = box.map(({ area }) => area);
  const least = reachOf(Math.min(...areas), constant, window).lowest;
  const most = reachOf(
    areas.reduce((sum, area) => sum + area, 0),
    constant,
    window,
  ).highest;
  for (let i = 0; i <= trials; i++) {
    const flow = least * (most / least) ** (i / trials);
    const best = expectedOpening(flow, constant, box, window);
    if (best?.inWindow) sets.set(best.label, { label: best.label, area: best.area });
  }
  const sorted = [...sets.values()].sort((a, b) => a.area - b.area);
  const single = new Set(box.map(({ label }) => label));
  return sorted.length <= mostSets ? sorted : thinned(sorted, single);
}

/** Every opening by itself, and of the sets those that keep the steps of the area most even. */
function thinned(sorted: readonly OpeningSet[], single: ReadonlySet<string>): OpeningSet[] {
  const kept = new Set(sorted.filter((set) => single.has(set.label)));
  kept.add(sorted[sorted.length - 1] as OpeningSet);
  while (kept.size < mostSets) {
    const gapAt = (set: OpeningSet) =>
      Math.min(...[...kept].map((other) => Math.abs(Math.log(set.area / other.area))));
    const rest = sorted.filter((set) => !kept.has(set));
    kept.add(rest.reduce((best, set) => (gapAt(set) > gapAt(best) ? set : best)));
  }
  return sorted.filter((set) => kept.has(set));
}
