import { oneValue } from "../algebra";
import { InputError } from "../cells";
import { fanLineSlope, fanLineTop, unboxedEstimate, unboxedFlow } from "../formulas";
import { type Budget, propagate } from "../spread";
import { areaInput, constantInput, type Manometer, manometerSpreads } from "./flow-budget";

/** One of two readings of one fan through different openings. */
export interface UnboxedReading {
  /** Open area and the half width of its limits, in² or cm². */
  readonly area: number;
  readonly areaLimit: number;
  /** Pa, above 0. */
  readonly pressure: number;
}

export interface TwoReadings extends Manometer {
  readonly first: UnboxedReading;
  readonly second: UnboxedReading;
  /** Flow constant, and its standard spread in percent. */
  readonly constant: number;
  readonly constantSpread: number;
}

/**
 * The flow that the fan would move without the box, from two openings: the straight line of flow
 * against box pressure, carried on to 0 Pa. Our own method, which no standard names: the reading
 * stays the measured value.
 *
 * Throws an InputError where a pressure is not above 0 or the two are alike.
 */
export function unboxedBudget({ first, second, ...given }: TwoReadings): Budget {
  requireApart(first.pressure, second.pressure);
  const tied = ["manometer limit", "zero offset"].slice(0, given.zeroLimit === undefined ? 1 : 2);
  return propagate(
    unboxedFlow,
    {
      K: constantInput(given.constant, given.constantSpread),
      A: areaInput(first.area, first.areaLimit, "first opening size"),
      P: {
        value: first.pressure,
        spreads: manometerSpreads(given, first.pressure, ", first opening"),
      },
      A2: areaInput(second.area, second.areaLimit, "second opening size"),
      P2: {
        value: second.pressure,
        spreads: manometerSpreads(given, second.pressure, ", second opening"),
      },
    },
    // One manometer: what it is off by, it is off by in the same direction both times.
    tied.map((label) => ({
      between: [`${label}, first opening`, `${label}, second opening`] as const,
      r: 1,
    })),
  );
}

/** Throws an InputError where no line can be drawn through the two pressures (Pa). */
export function requireApart(pressure: number, pressure2: number): void {
  if (pressure === pressure2)
    throw new InputError(
      `both pressures are ${pressure} Pa: read again with another opening, well apart from the first`,
    );
}

/** A point of a fan's rating: flow in the unit of the reading, pressure in Pa. */
export interface RatedPoint {
  readonly flow: number;
  readonly pressure: number;
}

/** Not a measured value, and never to be judged as one. */
export interface FlowEstimate {
  readonly estimate: number;
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
  const s = oneValue(fanLineSlope, {
    Q: low.flow,
    P: low.pressure,
    Q2: high.flow,
    P2: high.pressure,
  });
  const p = oneValue(fanLineTop, { P: low.pressure, s, Q: low.flow });
  const { flow: Q, pressure: P } = reading;
  if (P > p - s * Q)
    throw new InputError(
      `a flow of ${Q} at ${P} Pa lies above the fan's rated line: check the rating and the reading`,
    );
  return { estimate: oneValue(unboxedEstimate, { Q, P, s, p }) };
}
