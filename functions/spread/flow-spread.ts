import { call } from "../../src/rules";

/**
 * Spread of a flow read with the box, from all that may be off: three cells side by side a row.
 * @customfunction FLOW_SPREAD
 * @helpurl https://localhost:3443/help/flow-spread.html
 * @param {any[][]} readings Pressures, Pa: a row a fan, its repeats side by side; blanks are passed over.
 * @param {any[][]} area Open area, above 0, in² (cm² for "si"): one cell or a column.
 * @param {any[][]} areaLimit Half width of the area's limits, as AREA_LIMIT gives it.
 * @param {any[][]} constant Flow constant; with nothing between the commas 1.07 (its twin for "si").
 * @param {any[][]} constantSpread Standard spread of the constant, %.
 * @param {any[][]} meterPercent Limit of the manometer, % of the reading.
 * @param {any[][]} meterFloor Least limit of the manometer, Pa; the larger of the two holds.
 * @param {any[][]} [resolution] One step of the manometer's display, Pa.
 * @param {any[][]} [zeroLimit] How far its zero may be off each way, Pa.
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} Standard spread, effective degrees of freedom, and ± at 95 %; flows in cfm (L/s).
 */
export function FLOW_SPREAD(
  readings: any[][],
  area: any[][],
  areaLimit: any[][],
  constant: any[][],
  constantSpread: any[][],
  meterPercent: any[][],
  meterFloor: any[][],
  resolution: any[][],
  zeroLimit: any[][],
  units: any,
): any[][] {
  return call("FLOW_SPREAD", [
    readings,
    area,
    areaLimit,
    constant,
    constantSpread,
    meterPercent,
    meterFloor,
    resolution,
    zeroLimit,
    units,
  ]);
}
