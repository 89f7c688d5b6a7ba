import type { JobFile } from "../job";
import { trace } from "./trace";
import type { CellSeen, Trace } from "./trace-data";

/** A walk stops at so many cells: more are no longer read. */
const mostSteps = 60;

const asFound = (found: Trace) => found;

/**
 * A cell and what is behind it: its own trace, then that of each cell it reads, back to the typed
 * values, each cell once. Large ranges are not followed but for the cells that a look-up picked.
 */
export function traceBack(
  file: JobFile,
  sheet: string,
  row: number,
  col: number,
  told: (found: Trace) => Trace = asFound,
): Trace[] {
  const steps: Trace[] = [];
  const met = new Set<string>();
  const follow = (found: Trace) => {
    if (met.has(found.name) || steps.length >= mostSteps) return;
    const from = told(found);
    met.add(from.name);
    steps.push(from);
    for (const { place, name } of behind(from))
      if (!met.has(name) && steps.length < mostSteps)
        follow(trace(file, place.sheet, place.top, place.left));
  };
  follow(trace(file, sheet, row, col));
  return steps;
}

/** The cells that a traced one rests on, nearest first; blank ones are left out. */
function behind(from: Trace): CellSeen[] {
  const cells = [
    ...from.reads.flatMap((read) => read.cells),
    ...from.picks.flatMap((pick) => pick.cells),
    ...from.calls.flatMap((call) => call.picked),
    ...(from.spread ? [from.spread] : []),
  ];
  return cells.filter(
    ({ name, value }, i) => value !== null && cells.findIndex((each) => each.name === name) === i,
  );
}
