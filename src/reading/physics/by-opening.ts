import { kept } from "../../cells";
import type { Core } from "../evidence/laws";
import type { LineStats } from "../evidence/stats";
import { mostLines } from "./by-values";

/** A line of texts as a key for each record, "" where it has none. */
interface Codes {
  readonly line: number;
  readonly keys: readonly string[];
}

/** Cells looked at: lines that stand near each other come first. */
const mostWork = 10_000_000;
/** A box has fewer openings. */
const mostOpenings = 12;

/** Flow over √pressure is one number for each opening: what tells openings by name. */
export function coreByOpening(
  stats: ReadonlyMap<number, LineStats>,
  codes: readonly Codes[],
): Core | undefined {
  const numeric = [...stats.values()]
    .filter((s) => s.numeric >= 6 && s.dates < s.filled * 0.5 && s.distinctNumbers > 3)
    .slice(0, mostLines);
  const pairs = numeric
    .flatMap((flow) => numeric.map((pressure) => ({ flow, pressure })))
    .filter(({ flow, pressure }) => flow !== pressure && flow.median >= pressure.median)
    .sort((a, b) => apart(a) - apart(b));
  const openings = groupings(codes);
  let work = 0;
  let best: Core | undefined;
  for (const { flow, pressure } of pairs)
    for (const { line, groups, filled } of openings) {
      work += filled;
      if (work > mostWork) return best;
      const share = shareOf(flow, pressure, groups);
      if (share >= 0.75 && share > (best?.share ?? 0))
        best = {
          flow: flow.line,
          pressure: pressure.line,
          area: undefined,
          diameter: undefined,
          opening: line,
          constant: undefined,
          repeats: [],
          by: "physics",
          share,
        };
    }
  return best;
}

const apart = (pair: { readonly flow: LineStats; readonly pressure: LineStats }) =>
  Math.abs(pair.flow.line - pair.pressure.line);

/** The records of each key; of lines that part the records alike only the first. */
function groupings(codes: readonly Codes[]) {
  const known = new Set<string>();
  return codes.flatMap(({ line, keys }) => {
    const groups = new Map<string, number[]>();
    let filled = 0;
    keys.forEach((key, at) => {
      if (key === "") return;
      filled++;
      kept(groups, key, () => []).push(at);
    });
    const parted = [...groups.values()].join("|");
    if (known.has(parted)) return [];
    known.add(parted);
    return [{ line, groups: [...groups.values()], filled }];
  });
}

/** The share of the records whose flow over √pressure is that of their opening; 0 where that tells nothing. */
function shareOf(
  { numbers: flows }: LineStats,
  { numbers: pressures }: LineStats,
  groups: readonly (readonly number[])[],
): number {
  let [fits, all, opened] = [0, 0, 0];
  const levels = new Set<number>();
  for (const group of groups) {
    const ratios = Float64Array.from(
      group,
      (at) => flows[at]! / Math.sqrt(Math.abs(pressures[at]!)),
    )
      .filter((ratio) => ratio > 0 && Number.isFinite(ratio))
      .sort();
    if (ratios.length > 0) opened++;
    if (ratios.length < 2) continue;
    const middle = ratios[Math.floor(ratios.length / 2)]!;
    levels.add(Math.round(Math.log(middle) * 20));
    all += ratios.length;
    fits += ratios.filter((ratio) => Math.abs(ratio / middle - 1) < 0.03).length;
  }
  const isTelling = all >= 6 && opened <= mostOpenings && levels.size >= Math.min(2, opened);
  return isTelling ? fits / all : 0;
}
