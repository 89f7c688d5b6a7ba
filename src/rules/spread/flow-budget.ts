import { oneValue } from "../../algebra";
import { InputError } from "../../cells";
import { constantSpread, flowFromPressure, manometerLimit } from "../../formulas";
import { type Budget, fullWidth, halfWidth, propagate, repeats, type Spread } from "../../spread";

/** What is known of a manometer; pressures in Pa. */
export interface Manometer {
  /** Limit in percent of the reading, and the least limit: the larger of the two holds. */
  readonly meterPercent: number;
  readonly meterFloor: number;
  /** One step of the display. No line where left out. */
  readonly resolution?: number | undefined;
  /** How far the zero may be off, each way. No line where left out. */
  readonly zeroLimit?: number | undefined;
}

/** One reading of the box, or several of one fan, and how far each part of it may be off. */
interface FlowReading extends Manometer {
  /** Repeats in Pa; two or more tell their own scatter. */
  readonly readings?: readonly number[];
  /** Pressure in Pa; the mean of the readings where left out. */
  readonly pressure?: number | undefined;
  /** Open area, and the half width of its limits; in² or cm². */
  readonly area: number;
  readonly areaLimit: number;
  /** Flow constant, and its standard spread in percent. */
  readonly constant: number;
  readonly constantSpread: number;
}

/**
 * The uncertainty budget of a flow through the box, in cfm or L/s as the constant has it.
 *
 * Limits of manometer, zero and area are rectangular; the constant's spread is a standard one.
 * Lines are taken as independent of one another. Throws an InputError where the pressure is not
 * above 0: at 0 Pa the flow has no slope.
 */
export function flowBudget(given: FlowReading): Budget {
  const scatter = repeats(given.readings ?? []);
  const pressure = given.pressure ?? scatter.mean;
  return propagate(flowFromPressure, {
    K: constantInput(given.constant, given.constantSpread),
    A: areaInput(given.area, given.areaLimit, "opening size"),
    P: {
      value: pressure,
      spreads: [
        ...manometerSpreads(given, pressure),
        ...(scatter.n > 1
          ? [{ label: `scatter of ${scatter.n} readings`, u: scatter.u, dof: scatter.dof }]
          : []),
      ],
    },
  });
}

export function constantInput(value: number, percent: number) {
  const u = oneValue(constantSpread, { K: value, p: percent });
  return { value, spreads: [{ label: "flow constant", u }] };
}

export function areaInput(value: number, limit: number, label: string) {
  return { value, spreads: [{ label, u: halfWidth(limit) }] };
}

/** The lines a manometer adds to one pressure; `which` tells several readings apart. */
export function manometerSpreads(manometer: Manometer, pressure: number, which = ""): Spread[] {
  if (!(pressure > 0))
    throw new InputError(`pressure ${pressure}: a spread needs a reading above 0 Pa`);
  const { meterPercent: p, meterFloor: f, resolution, zeroLimit } = manometer;
  const limit = oneValue(manometerLimit, { P: pressure, p, f });
  const spreads: Spread[] = [{ label: `manometer limit${which}`, u: halfWidth(limit) }];
  if (resolution !== undefined)
    spreads.push({ label: `resolution${which}`, u: fullWidth(resolution) });
  if (zeroLimit !== undefined)
    spreads.push({ label: `zero offset${which}`, u: halfWidth(zeroLimit) });
  return spreads;
}
