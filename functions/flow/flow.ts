import { call } from "../../src/rules";

/**
 * Flow through an opening: constant × area × √pressure. A blank pressure gives a blank.
 * @customfunction FLOW
 * @helpurl https://localhost:3443/help/flow.html
 * @param {any[][]} area Open area, above 0, in² (cm² for "si"): one cell or a range.
 * @param {any[][]} pressure Pressure, room minus box, Pa, 0 or more: one cell or a range.
 * @param {any[][]} [constant] Flow constant; 1.07 where left out (its twin for "si").
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} Flow, cfm (L/s for "si").
 */
export function FLOW(area: any[][], pressure: any[][], constant: any[][], units: any): any[][] {
  return call("FLOW", [area, pressure, constant, units]);
}
