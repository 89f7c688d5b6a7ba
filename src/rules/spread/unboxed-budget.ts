import { InputError, significant } from "../../cells";
import { unboxedFlow } from "../../formulas";
import { type Budget, propagate } from "../../spread";
import { areaInput, constantInput, type Manometer, manometerSpreads } from "./flow-budget";

/** One of two readings of one fan through different openings. */
interface UnboxedReading {
  /** Open area and the half width of its limits, in² or cm². */
  readonly area: number;
  readonly areaLimit: number;
  /** Pa, above 0. */
  readonly pressure: number;
}

interface TwoReadings extends Manometer {
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
  const [low, high] = [near, far].map(({ pressure }) => significant(pressure));
  const ratio = far.pressure / near.pressure;
  if (!(near.pressure > 0)) return;
  if (near.area === far.area)
    throw new InputError(
      "both readings are through the same area: read again with another opening, half or twice as large",
    );
  if (ratio < leastRatio)
    throw new InputError(
      `pressures of ${low} and ${high} Pa are too near each other: read again with an opening that gives twice the pressure of the other, or more`,
    );
  // The constant of the box falls out of every comparison.
  const [q, q2] = [near, far].map(({ area, pressure }) => area * Math.sqrt(pressure)) as [
    number,
    number,
  ];
  if (q2 > q)
    throw new InputError(
      `the flow rises from ${low} to ${high} Pa, which no fan's does: look at both areas and read both again`,
    );
  const slope = (q - q2) / (far.pressure - near.pressure);
  if (slope > mostLoss * (q + slope * near.pressure))
    throw new InputError(
      `the flow falls by more than ${100 * mostLoss} % for each Pa of box pressure: look at both areas and read both again`,
    );
}
