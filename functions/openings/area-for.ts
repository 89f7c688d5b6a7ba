import { call } from "../../src/rules";

/**
 * Open area that puts the box at a wanted pressure for a flow.
 * @customfunction AREA_FOR
 * @helpurl https://localhost:3443/help/area-for.html
 * @param {any[][]} flow Flow to be measured, above 0, cfm (L/s for "si"): one cell or a range.
 * @param {any[][]} [pressure] Wanted pressure, Pa; 4 where left out.
 * @param {any[][]} [constant] Flow constant; 1.07 where left out (its twin for "si").
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} Open area, in² (cm² for "si").
 */
export function AREA_FOR(flow: any[][], pressure: any[][], constant: any[][], units: any): any[][] {
  return call("AREA_FOR", [flow, pressure, constant, units]);
}
