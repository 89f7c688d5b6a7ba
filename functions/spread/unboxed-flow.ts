import { call } from "../../src/rules";

/**
 * Flow that a fan moves without the box: readings with two openings, carried on to no box pressure.
 * @customfunction UNBOXED_FLOW
 * @helpurl https://localhost:3443/help/unboxed-flow.html
 * @param {any[][]} area Open area of one reading, above 0, in² (cm² for "si").
 * @param {any[][]} pressure Its pressure, room minus box, above 0, Pa.
 * @param {any[][]} area2 Open area of the other reading.
 * @param {any[][]} pressure2 Its pressure, Pa; twice the first or half of it, or further apart.
 * @param {any[][]} [constant] Flow constant; 1.07 where left out (its twin for "si").
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} Flow at no box pressure, cfm (L/s for "si"): worked out, not measured.
 */
export function UNBOXED_FLOW(
  area: any[][],
  pressure: any[][],
  area2: any[][],
  pressure2: any[][],
  constant: any[][],
  units: any,
): any[][] {
  return call("UNBOXED_FLOW", [area, pressure, area2, pressure2, constant, units]);
}
