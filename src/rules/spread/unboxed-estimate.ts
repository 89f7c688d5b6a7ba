import { plain } from "../../algebra";
import { InputError } from "../../cells";
import { fanLineSlope, fanLineTop, unboxedEstimate } from "../../formulas";
import { flowToCome, limit, pressure } from "../arguments";
import type { Help } from "../contract/help";
import { rule as ruleOf, type Sum, sumValue } from "../contract/rule";
import { sum } from "../contract/ruling";
import type { NativeForm } from "../native/native";
import { wrong } from "../native/text";

/** A point of a fan's rating: flow in the unit of the reading, pressure in Pa. */
export interface RatedPoint {
  readonly flow: number;
  readonly pressure: number;
}

/** Not a measured value, and never to be judged as one. */
export interface FlowEstimate {
  readonly estimate: number;
  readonly sums: readonly Sum[];
}

/**
 * An estimate of the flow without the box, where only one reading was taken: the fan is taken to
 * run on the straight line through two points of its rating, in either order, against a duct whose
 * resistance the reading itself tells.
 *
 * Throws an InputError where the rated flow does not fall as the pressure rises, or where the
 * reading lies above the fan's line.
 */
export function estimateUnboxed(
  reading: RatedPoint,
  rated: readonly [RatedPoint, RatedPoint],
): FlowEstimate {
  const [low, high] = rated[0].pressure <= rated[1].pressure ? rated : [rated[1], rated[0]];
  if (!(low.pressure < high.pressure && low.flow > high.flow))
    throw new InputError(
      `rated ${low.flow} at ${low.pressure} Pa and ${high.flow} at ${high.pressure} Pa: a fan's flow falls as its pressure rises`,
    );
  const slope = sum(fanLineSlope, {
    Q: low.flow,
    P: low.pressure,
    Q2: high.flow,
    P2: high.pressure,
  });
  const s = sumValue(slope);
  const top = sum(fanLineTop, { P: low.pressure, s, Q: low.flow });
  const p = sumValue(top);
  const { flow: Q, pressure: P } = reading;
  if (P > p - s * Q)
    throw new InputError(
      `a flow of ${Q} at ${P} Pa lies above the fan's rated line: check the rating and the reading`,
    );
  const own = sum(unboxedEstimate, { Q, P, s, p });
  return { estimate: sumValue(own), sums: [slope, top, own] };
}

export const rule = ruleOf({
  id: "UNBOXED_ESTIMATE",
  title: "Estimate of the flow without the box, from a fan's rating",
  arguments: {
    flow: flowToCome,
    pressure,
    ratedFlow: limit,
    ratedPressure: limit,
    ratedFlow2: limit,
    ratedPressure2: limit,
  },
  formulas: [unboxedEstimate],
  work({ flow, pressure, ratedFlow, ratedPressure, ratedFlow2, ratedPressure2 }) {
    const { estimate, sums } = estimateUnboxed({ flow, pressure }, [
      { flow: ratedFlow, pressure: ratedPressure },
      { flow: ratedFlow2, pressure: ratedPressure2 },
    ]);
    return { gives: estimate, why: () => ({ sums, words: ["an estimate, not a measured value"] }) };
  },
});

export const native: NativeForm = (native) => {
  const [Q, P] = [native.near("flow"), native.near("pressure")];
  const [R, R2, p1, p2] = native.all(
    "far",
    "ratedFlow",
    "ratedFlow2",
    "ratedPressure",
    "ratedPressure2",
  );
  const isFirst = `${p1}<=${p2}`;
  const falls = `AND(COUNT(${R},${R2},${p1},${p2})=4,${p1}<>${p2},(${p2}-${p1})*(${R}-${R2})>0)`;
  const up = plain(fanLineSlope, { Q: R, P: p1, Q2: R2, P2: p2 });
  const down = plain(fanLineSlope, { Q: R2, P: p2, Q2: R, P2: p1 });
  const flaw = wrong("a fan's flow falls as its pressure rises");
  const top = (s: string, Q: string, P: string) => plain(fanLineTop, { P, s, Q });
  const { slope: s, top: p } = native.call.steps("fan's rated line", [R, R2, p1, p2], {
    slope: () => `IF(${falls},IF(${isFirst},${up},${down}),${flaw})`,
    top: ({ slope }) => `IF(${isFirst},${top(slope, R, p1)},${top(slope, R2, p2)})`,
  });
  const above = wrong("the reading lies above the fan's rated line");
  const estimate = plain(unboxedEstimate, { Q, P, s, p });
  return `IF(${P}>${p}-${s}*${Q},${above},${estimate})`;
};

export const help: Help = {
  computes: [
    "An estimate where only one reading was taken. Two points of the fan's rating make a straight line; the reading tells how much of the fan's pressure the duct takes; without the box the fan moves along its line until the duct takes all of it.",
    "A fan that is dirty, old or badly fed does not run on its rated line. Never judge a fan by this number.",
  ],
  result: "Estimated flow at no box pressure, in the unit of the flow.",
  formulas: [fanLineSlope, fanLineTop, unboxedEstimate],
  examples: [
    {
      words:
        "A fan rated 80 cfm at 25 Pa and 60 cfm at 62.4 Pa reads 67.753 cfm with the box at 6.961 Pa.",
      args: [67.753, 6.961, 80, 25, 60, 62.4],
      gives: 69.9995,
      unit: "cfm",
    },
  ],
  troubles: [
    {
      when: "The rated flow rises with the pressure: the points are mixed up.",
      args: [48, 4, 40, 24.9, 60, 62.3],
    },
    { when: "The fan moves more than its rating allows.", args: [95, 4, 80, 24.9, 60, 62.3] },
  ],
  related: ["UNBOXED_FLOW", "FLOW"],
};
