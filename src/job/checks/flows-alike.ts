import { fixed, grouped, shown } from "../../cells";
import type { FanRows, Job } from "../read";
import { listed } from "../words";
import type { Check } from "./check";
import { leastReadings } from "./readings-copied";

/**
 * So large a share of so many fans is not met in so narrow a band where each fan has a duct of its
 * own: readings in tenths of a pascal alone make some 1 % (common practice).
 */
const alike = { fans: 8, width: 0.06, share: 0.8, shareOfAll: 0.6, above: 1.08 } as const;

/** Most flows of one tester in a narrow band: just above what is required, or whatever is required. */
export const checkFlowsAlike: Check = ({ fans }, report, { byRow }) => {
  if (!fans) return;
  const rates = byRow("rate of a measured fan", "fans", ratesMeasured);
  const required = (i: number) => rates[i] as number;
  const rows = [...rates.keys()].filter((i) => required(i) > 0);
  for (const [tester, own] of grouped(rows, (i) => fans.table.text("tester", i))) {
    const found = [own, ...grouped(own, required).values()]
      .map((all) => ({ all, band: densest(all, fans) }))
      .filter(({ all, band }) => isOdd(all, band, fans, required))
      .sort((a, b) => b.band.length - a.band.length)[0];
    if (!found) continue;
    const { all, band } = found;
    const flows = band.map((i) => fans.flow[i] as number);
    const rates = [...new Set(band.map(required))].sort((a, b) => a - b).map(shown);
    const [first = 0, ...others] = band.sort((a, b) => a - b);
    report.at("flows-alike", fans.table, "flow", first, fans.label(first), {
      what: `the flows of ${band.length === all.length ? "all" : `${band.length} of the`} ${all.length} fans that ${tester} measured for ${listed(rates)} lie between ${fixed(Math.min(...flows))} and ${fixed(Math.max(...flows))}`,
      effect:
        "Fans that hold their flow by themselves do that. Of others the flows differ more from duct to duct, and these may not have been measured.",
      mend: "Look at the fans' type, and compare with the field notes or photos.",
      also: others.map((i) => fans.table.cell("flow", i)),
    });
  }
};

/** The most fans whose flows lie in one band. */
function densest(rows: readonly number[], { flow }: FanRows): number[] {
  const of = (i: number | undefined) => flow[i as number] as number;
  const sorted = [...rows].sort((a, b) => of(a) - of(b));
  let best: number[] = [];
  for (let from = 0, to = 0; to < sorted.length; to++) {
    while (of(sorted[to]) > of(sorted[from]) * (1 + alike.width)) from++;
    if (to - from + 1 > best.length) best = sorted.slice(from, to + 1);
  }
  return best;
}

function isOdd(
  all: readonly number[],
  band: readonly number[],
  fans: FanRows,
  required: (i: number) => number,
): boolean {
  // Fans whose readings are all the same are told of as copied down.
  const readings = new Set(band.map((i) => fans.pressure[i]));
  if (band.length < alike.fans || readings.size < leastReadings) return false;
  const byRate = grouped(band, required);
  if ([...byRate.values()].filter(({ length }) => length >= leastReadings).length > 1)
    return band.length >= alike.shareOfAll * all.length;
  const mean = band.reduce((sum, i) => sum + (fans.flow[i] as number), 0) / band.length;
  const ratio = mean / required(band[0] as number);
  return band.length >= alike.share * all.length && ratio >= 1 && ratio <= alike.above;
}

/** What is required of each fan with a flow of a named tester; NaN of the others. */
function ratesMeasured({ fans }: Job): number[] {
  if (!fans) return [];
  const isTold = (i: number) =>
    fans.isMeasured(i) && (fans.flow[i] ?? 0) > 0 && fans.table.text("tester", i) !== "";
  return Array.from({ length: fans.length }, (_, i) =>
    isTold(i) ? fans.requiredNumber(i) : Number.NaN,
  );
}
