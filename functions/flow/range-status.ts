import { call } from "../../src/rules";

/**
 * Where a pressure stands against the window of an opening: in range, above, below or reversed.
 * @customfunction RANGE_STATUS
 * @helpurl https://localhost:3443/help/range-status.html
 * @param {any[][]} pressure Pressure, room minus box, Pa: one cell or a range. A blank gives a blank.
 * @param {any[][]} [low] Lowest pressure of the window, Pa; 1 where left out.
 * @param {any[][]} [high] Highest pressure of the window, Pa; 8 where left out.
 * @returns {any[][]} "in range", "above", "below" or "reversed".
 */
export function RANGE_STATUS(pressure: any[][], low: any[][], high: any[][]): any[][] {
  return call("RANGE_STATUS", [pressure, low, high]);
}
