import { fixed, kept, shown } from "../../cells";
import type { Check } from "./check";
import { leastReadings } from "./readings-copied";

/**
 * Flows of so many fans that lie so close together are not met with where each fan has a duct of its
 * own: readings in tenths of a pascal alone make some 1 % (common practice).
 */
const alike = { fans: 8, spread: 0.02, above: 1.08 } as const;

/** All flows of one tester in a narrow band just above what is required. */
export const checkFlowsAlike: Check = ({ fans }, report) => {
  if (!fans) return;
  const groups = new Map<string, { tester: string; required: number; rows: number[] }>();
  for (let i = 0; i < fans.length; i++) {
    const required = fans.requiredNumber(i);
    const tester = fans.table.text("tester", i);
    if (!fans.isMeasured(i) || tester === "" || !(required > 0)) continue;
    const key = `${tester}\u0000${required}`;
    kept(groups, key, () => ({ tester, required, rows: [] })).rows.push(i);
  }
  for (const { tester, required, rows } of groups.values()) {
    const flows = rows.map((i) => fans.flow[i] ?? Number.NaN);
    const mean = flows.reduce((sum, flow) => sum + flow, 0) / flows.length;
    const isBand = flows.every((flow) => Math.abs(flow / mean - 1) <= alike.spread);
    const ratio = mean / required;
    if (rows.length < alike.fans || !isBand || ratio < 1 || ratio > alike.above) continue;
    // Fans whose readings are all the same are told of as copied down.
    const readings = rows.map((i) => fans.pressure[i]);
    if (new Set(readings).size < leastReadings) continue;
    const [first = 0, ...others] = rows;
    report.at("flows-alike", fans.table, "flow", first, fans.label(first), {
      what: `the flows of all ${rows.length} fans that ${tester} measured for ${shown(required)} lie between ${fixed(Math.min(...flows))} and ${fixed(Math.max(...flows))}`,
      effect:
        "Fans that hold their flow by themselves do that. Of others the flows differ more from duct to duct, and these may not have been measured.",
      mend: "Look at the fans' type, and compare with the field notes or photos.",
      also: others.map((i) => fans.table.cell("flow", i)),
    });
  }
};
