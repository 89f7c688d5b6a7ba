import { oneValue } from "../algebra";
import { flowFromPressure } from "../formulas";
import { usualWindow } from "./constants";

/** The flows that one opening reads inside its window. */
export interface Reach {
  readonly lowest: number;
  readonly highest: number;
}

/** The reach of an open area, in the flow unit of the constant. */
export function reachOf(area: number, constant: number, window: Window = usualWindow): Reach {
  const at = (P: number) => oneValue(flowFromPressure, { K: constant, A: area, P });
  return { lowest: at(window.low), highest: at(window.high) };
}

interface Window {
  readonly low: number;
  readonly high: number;
}

/** Openings used alone leave these flows unread, between the lowest and the highest reach. */
export function gapsBetween(reaches: readonly Reach[]): Reach[] {
  const sorted = [...reaches].sort((a, b) => a.lowest - b.lowest);
  const gaps: Reach[] = [];
  let upTo = sorted[0]?.highest ?? 0;
  for (const { lowest, highest } of sorted.slice(1)) {
    if (lowest > upTo) gaps.push({ lowest: upTo, highest: lowest });
    upTo = Math.max(upTo, highest);
  }
  return gaps;
}

/**
 * Above this share of the box face, the air's approach to the opening raises the flow by more
 * than 3.3 % (β = 0.5 in the approach factor, ISO 5167-1).
 */
export const mostOfFace = 0.25;
