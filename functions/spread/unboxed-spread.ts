import { call } from "../../src/rules";

/**
 * Standard spread of what UNBOXED_FLOW gives, both readings being of one manometer.
 * @customfunction UNBOXED_SPREAD
 * @helpurl https://localhost:3443/help/unboxed-spread.html
 * @param {any[][]} area Open area of one reading, above 0, in² (cm² for "si").
 * @param {any[][]} pressure Its pressure, room minus box, above 0, Pa.
 * @param {any[][]} area2 Open area of the other reading.
 * @param {any[][]} pressure2 Its pressure, Pa; twice the first or half of it, or further apart.
 * @param {any[][]} constant Flow constant; with nothing between the commas 1.07 (its twin for "si").
 * @param {any[][]} meterPercent Limit of the manometer, % of the reading.
 * @param {any[][]} meterFloor Least limit of the manometer, Pa; the larger of the two holds.
 * @param {any[][]} areaLimit Half width of the first area's limits, as AREA_LIMIT gives it.
 * @param {any[][]} areaLimit2 Half width of the other area's limits.
 * @param {any[][]} constantSpread Standard spread of the constant, %.
 * @param {any[][]} [resolution] One step of the manometer's display, Pa.
 * @param {any[][]} [zeroLimit] How far its zero may be off each way, Pa.
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} Standard spread of the flow, cfm (L/s for "si").
 */
export function UNBOXED_SPREAD(
  area: any[][],
  pressure: any[][],
  area2: any[][],
  pressure2: any[][],
  constant: any[][],
  meterPercent: any[][],
  meterFloor: any[][],
  areaLimit: any[][],
  areaLimit2: any[][],
  constantSpread: any[][],
  resolution: any[][],
  zeroLimit: any[][],
  units: any,
): any[][] {
  return call("UNBOXED_SPREAD", [
    area,
    pressure,
    area2,
    pressure2,
    constant,
    meterPercent,
    meterFloor,
    areaLimit,
    areaLimit2,
    constantSpread,
    resolution,
    zeroLimit,
    units,
  ]);
}
