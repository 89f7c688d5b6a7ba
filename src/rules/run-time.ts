import { oneValue } from "../algebra";
import { InputError } from "../cells";
import type { CycleRule, Edition, RunTimeRule } from "../editions";
import { betweenTwoRows, onRate, runningRate } from "../formulas";
import type { RequiredRate } from "./room-rate";
import { noRule, worked } from "./ruling";

/**
 * The flow while on that makes up for the time off, in the unit of `rate`.
 *
 * `share` of the time on, above 0 and up to 1. `cycleHours` from one start to the next; left out,
 * the longest cycle that the edition averages plainly, or its segment.
 */
export function rateWhileOn(
  edition: Edition,
  rate: number,
  share: number,
  cycleHours?: number,
): RequiredRate {
  if (!(rate > 0)) throw new InputError(`rate ${rate}: give a number above 0`);
  if (!(share > 0 && share <= 1))
    throw new InputError(
      `runShare ${share}: give a share of the time above 0 and up to 1, such as 0.5 for half of it`,
    );
  if (cycleHours !== undefined && !(cycleHours > 0))
    throw new InputError(`cycleHours ${cycleHours}: give a number above 0`);
  if (edition.runTime) return inSegments(edition.runTime, rate, share, cycleHours);
  if (edition.cycle) return inCycles(edition, edition.cycle, rate, share, cycleHours);
  throw noRule(edition, "rule for fans that do not run all the time", (each) =>
    Boolean(each.runTime ?? each.cycle),
  );
}

function inCycles(
  edition: Edition,
  rule: CycleRule,
  R: number,
  f: number,
  hours = rule.averageHours,
): RequiredRate {
  if (hours > rule.averageHours)
    throw new InputError(
      `cycleHours ${hours}: ${edition.id} averages plainly over ${rule.averageHours} hours at most; beyond that it has a table that is not held here: work from your copy`,
    );
  const given = { R, e: 1, f };
  return {
    rate: oneValue(onRate, given),
    source: rule.source,
    working: `plain average over cycles of ${hours} h; ${worked(onRate, given, "ip")}`,
  };
}

function inSegments(
  rule: RunTimeRule,
  R: number,
  share: number,
  hours = rule.segmentHours,
): RequiredRate {
  const { segmentHours, rows, source } = rule;
  // Only a cycle that fits whole times into the segment runs the same share in each one.
  const times = segmentHours / hours;
  if (times < 1 - 1e-9 || Math.abs(times - Math.round(times)) > 1e-9)
    throw new InputError(
      `cycleHours ${hours}: ${source.work} counts the share of each ${segmentHours}-hour segment: give ${segmentHours} or a cycle that fits into it whole times`,
    );
  const upper = rows.findIndex(([edge]) => share <= edge);
  const [x2, y2] = rows[upper] ?? [1, 1];
  const [x1, y1] = rows[upper - 1] ?? [x2, y2];
  if (share < x1 || (upper === 0 && share < x2))
    throw new InputError(
      `runShare ${share}: ${source.work} asks for at least ${x2} of each ${segmentHours}-hour segment`,
    );
  const between = { x: share, x1, y1, x2, y2 };
  const listed = share === x2;
  const m = listed ? y2 : oneValue(betweenTwoRows, between);
  return {
    rate: oneValue(runningRate, { R, m }),
    source,
    working: [
      ...(listed ? [] : [worked(betweenTwoRows, between, "ip")]),
      worked(runningRate, { R, m }, "ip"),
    ].join("; "),
  };
}
