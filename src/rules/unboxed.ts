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
 * Throws an InputError where a pressure is not above 0 or no fan can have given both readings.
 */
export function unboxedBudget({ first, second, ...given }: TwoReadings): Budget {
  requireLine(first, second);
  const tied = given.zeroLimit === undefined ? [] : ["zero offset"];
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
    // One zeroing: what the zero is off by, it is off by both times. The limit of the manometer is
    // no fixed offset: it may be off either way at either pressure.
    tied.map((label) => ({
      between: [`${label}, first opening`, `${label}, second opening`] as const,
      r: 1,
    })),
  );
}

type Point = Pick<UnboxedReading, "area" | "pressure">;

/** Pressures nearer to each other leave the line to the gauge's own scatter: common practice. */
const leastRatio = 2;
/** A fan that loses more of its flow for each Pa was disturbed between the readings: common practice. */
const mostLoss = 0.05;

/** Throws an InputError where two readings give no line that a fan can have. */
export function requireLine(first: Point, second: Point): void {
  const [near, far] = first.pressure <= second.pressure ? [first, second] : [second, first];
  const ratio = far.pressure / near.pressure;
  if (!(near.pressure > 0)) return;
  if (near.area === far.area)
    throw new InputError(
      "both readings are through the same area: read again with another opening, half or twice as large",
    );
  if (ratio < leastRatio)
    throw new InputError(
      `pressures of ${near.pressure} and ${far.pressure} Pa are too near each other: read again with an opening that gives twice the pressure of the other, or more`,
    );
  // The constant of the box falls out of every comparison.
  const [q, q2] = [near, far].map(({ area, pressure }) => area * Math.sqrt(pressure)) as [
    number,
    number,
  ];
  if (q2 > q)
    throw new InputError(
      `the flow rises from ${near.pressure} to ${far.pressure} Pa, which no fan's does: look at both areas and read both again`,
    );
  const slope = (q - q2) / (far.pressure - near.pressure);
  if (slope > mostLoss * (q + slope * near.pressure))
    throw new InputError(
      `the flow falls by more than ${100 * mostLoss} % for each Pa of box pressure: look at both areas and read both again`,
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
