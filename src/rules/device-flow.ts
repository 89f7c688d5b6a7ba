import { oneValue } from "../algebra";
import { InputError } from "../cells";
import { deviceFlow as deviceFlowFormula, deviceFlowWithErrors, deviceLimit } from "../formulas";
import { type Budget, fullWidth, halfWidth, propagate, repeats, type Spread } from "../spread";

/** One setting of a device with ranges, from the device's own record. */
export interface RangeSetting {
  readonly label: string;
  readonly constant: number;
  readonly exponent: number;
  /** The readings between which the record holds. */
  readonly lowest?: number;
  readonly highest?: number;
}

/** constant × reading ^ exponent, in the flow unit of the constant. */
export function deviceFlow(reading: number, constant: number, exponent: number): number {
  return oneValue(deviceFlowFormula, { K: constant, r: reading, n: exponent });
}

/**
 * The flow of a device at one of its settings. Throws where the setting is not in the table, with
 * those that are, and where the reading lies outside what the record covers.
 */
export function flowAtSetting(
  settings: readonly RangeSetting[],
  label: string,
  reading: number,
): number {
  const wanted = label.trim().toLowerCase();
  const found = settings.find((each) => each.label.trim().toLowerCase() === wanted);
  if (!found)
    throw new InputError(
      `unknown setting "${label}": the device has ${settings.map((each) => each.label).join(", ") || "none"}`,
    );
  const { lowest, highest } = found;
  if ((lowest !== undefined && reading < lowest) || (highest !== undefined && reading > highest))
    throw new InputError(
      `reading ${reading}: setting ${found.label} holds from ${lowest ?? "the least"} to ${highest ?? "the most"}; change the setting`,
    );
  return deviceFlow(reading, found.constant, found.exponent);
}

/** How far a device may be off. The limits are on the flow: the larger of the two counts. */
export interface DeviceLimits {
  readonly percent: number;
  /** In the unit of the flow. */
  readonly floor: number;
  /** Smallest step of the reading, in the unit of the reading; none where left out. */
  readonly resolution?: number;
}

/**
 * The spread of a device's flow from one or more readings of one setting: the larger limit as a
 * rectangular distribution, the resolution by its full width, the scatter of the mean by its
 * repeats.
 *
 * One reading has no scatter to tell, and the budget then lacks that line. Throws where there is
 * no reading.
 */
export function deviceBudget(
  readings: readonly number[],
  constant: number,
  exponent: number,
  limits: DeviceLimits,
): Budget {
  if (readings.length === 0) throw new InputError("no reading: give one or more");
  const read = repeats(readings);
  const flow = deviceFlow(read.mean, constant, exponent);
  const limit = oneValue(deviceLimit, { Q: flow, s: limits.percent, m: limits.floor });
  const scatter: Spread[] =
    read.n > 1 ? [{ label: "repeat readings", u: read.u, dof: read.dof }] : [];
  const { resolution = 0 } = limits;
  return propagate(deviceFlowWithErrors, {
    K: { value: constant },
    n: { value: exponent },
    r: { value: read.mean, spreads: scatter },
    d: {
      value: 0,
      spreads: resolution > 0 ? [{ label: "resolution", u: fullWidth(resolution) }] : [],
    },
    e: { value: 0, spreads: [{ label: "device limit", u: halfWidth(limit) }] },
  });
}
