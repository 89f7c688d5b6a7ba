import type { Core } from "../evidence/laws";
import type { LineStats } from "../evidence/stats";

/** Flow over √pressure is one number for each opening: what tells openings by name. */
export function coreByOpening(
  stats: ReadonlyMap<number, LineStats>,
  codes: readonly { line: number; keys: readonly string[] }[],
): Core | undefined {
  let best: Core | undefined;
  const numeric = [...stats.values()].filter(
    (s) => s.numeric >= 6 && s.dates < s.filled * 0.5 && s.distinctNumbers > 3,
  );
  for (const flow of numeric)
    for (const pressure of numeric) {
      if (flow === pressure || flow.median < pressure.median) continue;
      for (const { line, keys } of codes) {
        const groups = new Map<string, number[]>();
        for (let at = 0; at < keys.length; at++) {
          const ratio = flow.numbers[at]! / Math.sqrt(Math.abs(pressure.numbers[at]!));
          if (keys[at] === "" || !(ratio > 0) || !Number.isFinite(ratio)) continue;
          groups.set(keys[at]!, [...(groups.get(keys[at]!) ?? []), ratio]);
        }
        if (groups.size < 1 || groups.size > 12) continue;
        let [fits, all, levels] = [0, 0, new Set<number>()];
        for (const ratios of groups.values()) {
          if (ratios.length < 2) continue;
          const middle = [...ratios].sort((a, b) => a - b)[Math.floor(ratios.length / 2)]!;
          levels = levels.add(Math.round(Math.log(middle) * 20));
          all += ratios.length;
          fits += ratios.filter((ratio) => Math.abs(ratio / middle - 1) < 0.03).length;
        }
        const share = all ? fits / all : 0;
        if (
          all >= 6 &&
          share >= 0.75 &&
          levels.size >= Math.min(2, groups.size) &&
          share > (best?.share ?? 0)
        )
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
    }
  return best;
}
