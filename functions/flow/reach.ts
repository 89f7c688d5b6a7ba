import { call } from "../../src/rules";

/**
 * Lowest and highest flow that an opening can read, two cells side by side for each area.
 * @customfunction REACH
 * @helpurl https://localhost:3443/help/reach.html
 * @param {any[][]} area Open area, above 0, in² (cm² for "si"): one cell or a column.
 * @param {any[][]} [constant] Flow constant; 1.07 where left out (its twin for "si").
 * @param {any[][]} [low] Lowest pressure of the window, Pa; 1 where left out.
 * @param {any[][]} [high] Highest pressure of the window, Pa; 8 where left out.
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} Lowest and highest flow, cfm (L/s for "si").
 */
export function REACH(
  area: any[][],
  constant: any[][],
  low: any[][],
  high: any[][],
  units: any,
): any[][] {
  return call("REACH", [area, constant, low, high, units]);
}
