import { shown } from "../../cells";
import { usualMeter } from "../../rules";
import { listed } from "../words";
import type { Check } from "./check";

/** Flow goes with √pressure: readings whose roots differ by more want a look (common practice). */
const mostFlowRatio = 1.1;

/** Readings of one fan that disagree: within the manometer's own limit two are the same one. */
export const checkReadingsApart: Check = (job, report) => {
  const { fans } = job;
  if (!fans) return;
  for (let i = 0; i < fans.length; i++) {
    const readings = fans.readings(i);
    const [low, high] = [Math.min(...readings), Math.max(...readings)];
    if (readings.length < 2 || low <= 0 || high - low <= 2 * usualMeter.floor) continue;
    const ratio = Math.sqrt(high / low);
    if (ratio <= mostFlowRatio) continue;
    report.at("readings-apart", fans.table, fans.typedPressure(i), i, fans.label(i), {
      what: `the readings ${listed(readings.map(shown))} Pa lie far apart`,
      effect: `Taken alone they give flows up to ${shown(100 * (ratio - 1))} % apart.`,
      mend: "Look for wind, a moving door, a box not seated or a slip of the pen, and read again.",
    });
  }
};
