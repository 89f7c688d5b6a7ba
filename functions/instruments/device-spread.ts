import { call } from "../../src/rules";

/**
 * Spread of a flow read with a device, from its limits and the repeats: three cells a row.
 * @customfunction DEVICE_SPREAD
 * @helpurl https://localhost:3443/help/device-spread.html
 * @param {any[][]} readings What the device showed: a row a fan, its repeats side by side; blanks are passed over.
 * @param {any[][]} constant Constant of the device at its setting, above 0.
 * @param {any[][]} exponent Exponent of the device; 1 for a device that shows a flow.
 * @param {any[][]} percent Limit of the device, % of the flow; blank where it has none.
 * @param {any[][]} floor Least limit, in the unit of the flow; the larger of the two holds.
 * @param {any[][]} [resolution] One step of the device's display, in the unit of the reading.
 * @returns {any[][]} Standard spread, effective degrees of freedom, and ± at 95 %, side by side.
 */
export function DEVICE_SPREAD(
  readings: any[][],
  constant: any[][],
  exponent: any[][],
  percent: any[][],
  floor: any[][],
  resolution: any[][],
): any[][] {
  return call("DEVICE_SPREAD", [readings, constant, exponent, percent, floor, resolution]);
}
