import { shown } from "../../cells";
import { usualMeter } from "../../rules";
import { listed } from "../words";
import { eachFan } from "./each";

/** Flow goes with √pressure: readings whose roots differ by more want a look (common practice). */
const mostFlowRatio = 1.1;

/** Readings of one fan that disagree: within the manometer's own limit two are the same one. */
export const checkReadingsApart = eachFan((fans) => (i, say) => {
  const readings = fans.readings(i);
  const [low, high] = [Math.min(...readings), Math.max(...readings)];
  if (readings.length < 2 || low <= 0 || high - low <= 2 * usualMeter.floor) return;
  const ratio = Math.sqrt(high / low);
  if (ratio <= mostFlowRatio) return;
  say("readings-apart", fans.typedPressure(i), {
    what: `the readings ${listed(readings.map(shown))} Pa lie far apart`,
    effect: `Taken alone they give flows up to ${shown(100 * (ratio - 1))} % apart.`,
    mend: "Look for wind, a moving door, a box not seated or a slip of the pen, and read again.",
  });
});
