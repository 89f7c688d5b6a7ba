import { oneValue } from "../algebra";
import { pressureFromFlow } from "../formulas";
import { type NextOpening, nextOpening } from "./next-opening";
import type { Opening } from "./openings-label";
import { usualWindow } from "./range-status";

/**
 * The opening, or set of openings, to take to a fan of which only the flow is known: the one whose
 * pressure at that flow is nearest to the aimed one, inside the window where there is one.
 *
 * `flow` above 0, in the unit of the constant; the areas of `box` in its area unit. Undefined for a
 * box without openings.
 */
export function expectedOpening(
  flow: number,
  constant: number,
  box: readonly Opening[],
  window: { readonly low: number; readonly high: number } = usualWindow,
): NextOpening | undefined {
  const area = 1;
  return nextOpening(
    oneValue(pressureFromFlow, { Q: flow, K: constant, A: area }),
    area,
    box,
    window,
  );
}
