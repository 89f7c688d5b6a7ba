import { call } from "../../src/rules";

/**
 * Pressure across an opening at a given flow: (flow ÷ (constant × area))².
 * @customfunction BOX_PRESSURE
 * @helpurl https://localhost:3443/help/box-pressure.html
 * @param {any[][]} area Open area, above 0, in² (cm² for "si"): one cell or a range.
 * @param {any[][]} flow Flow, 0 or more, cfm (L/s for "si"): one cell or a range.
 * @param {any[][]} [constant] Flow constant; 1.07 where left out (its twin for "si").
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} Pressure, Pa.
 */
export function BOX_PRESSURE(area: any[][], flow: any[][], constant: any[][], units: any): any[][] {
  return call("BOX_PRESSURE", [area, flow, constant, units]);
}
