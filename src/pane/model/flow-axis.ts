/** A logarithmic axis of flow on which equal ratios have equal length. */
interface FlowAxis {
  readonly low: number;
  readonly high: number;
  readonly ticks: readonly number[];
  /** Position of a flow, 0 at the left end and 1 at the right. */
  at(flow: number): number;
}

/** Width of a digit in the small text of a chart, in pixels. */
const digitWidth = 7;

/** An axis that covers these flows and ends on ticks of 1, 2 and 5. */
export function flowAxis(flows: readonly number[]): FlowAxis {
  const usable = flows.filter((flow) => flow > 0 && Number.isFinite(flow));
  const least = usable.length > 0 ? Math.min(...usable) : 1;
  const most = usable.length > 0 ? Math.max(...usable) : 10;
  const steps = roundSteps(least, most);
  const low = steps.filter((step) => step <= least).at(-1) ?? least;
  const high = steps.find((step) => step >= most && step > low) ?? most;
  return {
    low,
    high,
    ticks: steps.filter((step) => step >= low && step <= high),
    at: (flow) => Math.log(flow / low) / Math.log(high / low),
  };
}

/** The ticks whose labels fit beside one another on an axis of so many pixels. */
export function ticksFor(axis: FlowAxis, width: number): number[] {
  const shown: number[] = [];
  let free = Number.NEGATIVE_INFINITY;
  for (const tick of axis.ticks) {
    const half = (String(tick).length * digitWidth) / 2 + 3;
    const middle = axis.at(tick) * width;
    if (middle - half < free) continue;
    shown.push(tick);
    free = middle + half;
  }
  return shown;
}

/** 1, 2 and 5 times the powers of ten from below `least` to above `most`. */
function roundSteps(least: number, most: number): number[] {
  const steps: number[] = [];
  for (let power = Math.floor(Math.log10(least)); power <= Math.log10(most) + 1; power++)
    for (const lead of [1, 2, 5]) steps.push(Number((lead * 10 ** power).toPrecision(1)));
  return steps;
}
