import { oneValue, plain } from "../../algebra";
import { pressureFromFlow } from "../../formulas";
import { constant, flowToCome, high, low, openingLists, units } from "../arguments";
import { usualWindow } from "../constants";
import { optional } from "../contract/argument";
import type { Help } from "../contract/help";
import { rule as ruleOf } from "../contract/rule";
import { bestSet, setsToTry } from "../native/best-set";
import type { NativeForm } from "../native/native";
import { listedOpenings } from "../openings/box-openings";
import type { Opening } from "../openings/openings-label";
import {
  type NextOpening,
  nearestWords,
  nextOpening,
  openingCell,
  type Window,
} from "./next-opening";

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
  window: Window = usualWindow,
): NextOpening | undefined {
  const pressure = oneValue(pressureFromFlow, { Q: flow, K: constant, A: 1 });
  return nextOpening(pressure, 1, box, window);
}

export const rule = ruleOf({
  id: "EXPECTED_OPENING",
  title: "Opening to take to a fan",
  arguments: { flow: flowToCome, ...openingLists, constant: optional(constant), low, high, units },
  formulas: [pressureFromFlow],
  work(given) {
    const { flow: Q, constant: K, low, high } = given;
    const next = expectedOpening(Q, K, listedOpenings(given), { low, high });
    return {
      gives: openingCell(next),
      why: () =>
        next
          ? {
              sums: [{ formula: pressureFromFlow, given: { Q, K, A: next.area } }],
              words: [nearestWords(next, given)],
            }
          : { sources: [pressureFromFlow.source] },
    };
  },
});

export const native: NativeForm = (native) => {
  const list = setsToTry(native);
  if (typeof list === "string") return list;
  const [Q, K] = [native.far("flow"), native.far("constant")];
  const pressure = plain(pressureFromFlow, { Q, K, A: "1" });
  const P = native.call.step("pressure at an area of 1", `IF(COUNT(${Q},${K})=2,${pressure},0)`);
  return bestSet(native, list, { P, A: "1" });
};

const labels = ["A", "B", "C"];
const areas = [4, 12, 24];

export const help: Help = {
  computes: [
    "For packing the box before a visit: which of its openings, or set of them, will stand nearest to 4 Pa at the flow that the plan or the rating promises; nearest to the middle of a window that leaves 4 Pa out.",
    "A fan seldom moves what it is rated for. Read first, and change the opening by NEXT_OPENING.",
  ],
  result: 'A label such as A or A+C; "none in range, nearest …" when no set will do.',
  examples: [
    {
      words: "A fan of 50 cfm is expected: C alone will stand at 3.8 Pa.",
      args: [50, labels, areas],
      gives: "C",
    },
  ],
  troubles: [
    { when: "The flow is below 0.", args: [-50, labels, areas] },
    { when: "The columns are not of one length.", args: [50, labels, [4, 12]] },
    {
      when: "The box is not in the list.",
      args: [50, labels, areas, "south", ["north", "north", "north"]],
    },
  ],
  related: ["NEXT_OPENING", "AREA_FOR", "REACH"],
};
