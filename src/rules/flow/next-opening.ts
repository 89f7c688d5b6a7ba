import { oneValue } from "../../algebra";
import { areaAtPressure, pressureAtOtherArea } from "../../formulas";
import { area, high, low, openingLists, pressure } from "../arguments";
import { usualWindow } from "../constants";
import type { Help } from "../contract/help";
import { rule as ruleOf } from "../contract/rule";
import { sixDigits } from "../contract/say";
import { bestSet, setsToTry } from "../native/best-set";
import type { NativeForm } from "../native/native";
import { listedOpenings } from "../openings/box-openings";
import type { Opening } from "../openings/openings-label";
import { aimIn } from "./aimed-pressure";
import { setsAround } from "./opening-sets";

export interface NextOpening {
  /** "A" or "A+C". */
  readonly label: string;
  readonly area: number;
  /** The pressure to expect, Pa, if the fan keeps its flow. */
  readonly pressure: number;
  /** False when no set of openings brings the box into the window; then this is the nearest. */
  readonly inWindow: boolean;
}

export interface Window {
  readonly low: number;
  readonly high: number;
}

/**
 * The opening, or set of openings, to use next: the one whose expected pressure is nearest to the
 * aimed one by ratio; of equals the one with fewer openings.
 *
 * `area` and the areas of `box` share a unit. `pressure` in Pa above 0. Undefined for a box
 * without openings.
 */
export function nextOpening(
  pressure: number,
  area: number,
  box: readonly Opening[],
  window: Window = usualWindow,
): NextOpening | undefined {
  const aim = aimIn(window);
  const aimed = oneValue(areaAtPressure, { A: area, P: pressure, P2: aim });
  // On each side of the aimed area the nearest set is the best of that side.
  const sides = setsAround(box, aimed).map((set) => {
    const expected = oneValue(pressureAtOtherArea, { P: pressure, A: area, A2: set.area });
    const inWindow = expected >= window.low && expected <= window.high;
    return { label: set.label, area: set.area, pressure: expected, inWindow };
  });
  const distance = (set: NextOpening) => Math.abs(Math.log(set.pressure / aim));
  return sides.sort(
    (a, b) => Number(b.inWindow) - Number(a.inWindow) || distance(a) - distance(b),
  )[0];
}

/** What a function gives for the opening found. */
export function openingCell(next: NextOpening | undefined): string {
  if (!next) return "no opening in the list";
  return next.inWindow ? next.label : `none in range, nearest ${next.label}`;
}

export const nearestWords = ({ label, area }: NextOpening, window: Window): string =>
  `${label} (${sixDigits(area)}) comes nearest to ${sixDigits(aimIn(window))} Pa by ratio`;

export const rule = ruleOf({
  id: "NEXT_OPENING",
  title: "Opening to use next",
  arguments: { pressure, area, ...openingLists, low, high },
  formulas: [pressureAtOtherArea],
  work(given) {
    const { pressure: P, area: A, low, high } = given;
    const { source } = pressureAtOtherArea;
    if (P >= low && P <= high) {
      const words = () =>
        `${sixDigits(P)} Pa lies in the window of ${sixDigits(low)} to ${sixDigits(high)} Pa`;
      return { gives: "keep", why: () => ({ words: [words()], sources: [source] }) };
    }
    const next = nextOpening(P, A, listedOpenings(given), { low, high });
    return {
      gives: openingCell(next),
      why: () =>
        next
          ? {
              sums: [{ formula: pressureAtOtherArea, given: { P, A, A2: next.area } }],
              words: [nearestWords(next, given)],
            }
          : { sources: [source] },
    };
  },
});

export const native: NativeForm = (native) => {
  const list = setsToTry(native);
  if (typeof list === "string") return list;
  const P = native.near("pressure");
  const next = bestSet(native, list, { P: native.far("pressure"), A: native.far("area") });
  return `IF(AND(${P}>=${native.near("low")},${P}<=${native.near("high")}),"keep",${next})`;
};

const labels = ["A", "B", "C"];
const areas = [4, 12, 24];

export const help: Help = {
  computes: [
    "The answer is the set of openings whose expected pressure comes nearest to 4 Pa by ratio, with as few openings as will do. A window that leaves 4 Pa out is aimed at in its middle, √(low · high).",
    "The expectation takes the fan to keep its flow. A weak fan gains a little as the box opens, so read again after the change.",
  ],
  result:
    'A label such as A or A+C; "keep" when the pressure is in the window; "none in range, nearest …" when no set will do.',
  examples: [
    {
      words:
        "B (12 in²) is open and the box stands at 16 Pa. With C (24 in²) instead, 4 Pa are to be expected.",
      args: [16, 12, labels, areas],
      gives: "C",
    },
    {
      words: "C is open and 4 Pa lie in the window: nothing need be changed.",
      args: [4, 24, labels, areas],
      gives: "keep",
    },
  ],
  troubles: [
    { when: "The pressure is below 0.", args: [-4, 12, labels, areas] },
    { when: "The columns are not of one length.", args: [16, 12, labels, [4, 12]] },
    {
      when: "The box is not in the list.",
      args: [16, 12, labels, areas, "south", ["north", "north", "north"]],
    },
  ],
  related: ["RANGE_STATUS", "OPEN_AREA"],
};
