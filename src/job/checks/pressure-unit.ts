import { oneValue } from "../../algebra";
import { shown, significant } from "../../cells";
import { flowFromPressure } from "../../formulas";
import { aimedPressure } from "../../rules";
import { convert } from "../../units";
import type { Job } from "../read";
import { eachFan } from "./each";

/** A pressure this small is either a slip of the unit or no reading at all (common practice). */
const suspect = 0.2;

/** Fans on site move somewhat less than their rating (common practice). */
const usualShareOfRating = 0.85;

/** Probable slips: inches of water, or hectopascal, typed as pascal. */
export const checkPressureUnit = eachFan((fans, job) => (i, say) => {
  const slip = slippedUnit(job, i);
  if (!slip) return;
  const typed = significant(fans.pressure[i] as number, 3);
  say("pressure-unit", fans.typedPressure(i), {
    what: `${typed} Pa is probably ${typed} ${slip.unit}, which is ${shown(slip.pascal)} Pa`,
    effect: `The flow comes out at about ${shown(100 * Math.sqrt(1 / slip.factor))} % of the true flow.`,
    mend: `Set the manometer to Pa and read again, or type the readings in Pa (× ${shown(slip.factor)}).`,
  });
});

/** The unit a small pressure was probably read in, or undefined. */
export function slippedUnit(
  job: Job,
  i: number,
): { unit: string; factor: number; pascal: number } | undefined {
  const { fans, settings } = job;
  const pressure = fans?.pressure[i] ?? Number.NaN;
  if (!fans || !(pressure > 0) || pressure >= suspect) return undefined;
  const rated = fans.table.number("rated", i);
  const candidates = ["in w.c.", "hPa"]
    .map((unit) => ({
      unit,
      factor: convert(1, unit, "Pa"),
      pascal: convert(pressure, unit, "Pa"),
    }))
    .filter(({ pascal }) => pascal >= settings.low / 2 && pascal <= settings.high * 1.5);
  const strangeness = ({ pascal }: { pascal: number }) => {
    const given = { K: fans.constant[i] as number, A: fans.area[i] as number, P: pascal };
    const flow = oneValue(flowFromPressure, given);
    return flow > 0 && rated > 0
      ? Math.abs(Math.log(flow / (usualShareOfRating * rated)))
      : Math.abs(Math.log(pascal / aimedPressure));
  };
  return candidates.sort((a, b) => strangeness(a) - strangeness(b))[0];
}
