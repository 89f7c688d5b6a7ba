import { call } from "../../src/rules";

/**
 * Diameter of the round hole that puts the box at a wanted pressure for a flow.
 * @customfunction DIAMETER_FOR
 * @helpurl https://localhost:3443/help/diameter-for.html
 * @param {any[][]} flow Flow to be measured, above 0, cfm (L/s for "si"): one cell or a range.
 * @param {any[][]} [pressure] Wanted pressure, Pa; 4 where left out.
 * @param {any[][]} [constant] Flow constant; 1.07 where left out (its twin for "si").
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} Diameter, in (cm for "si").
 */
export function DIAMETER_FOR(
  flow: any[][],
  pressure: any[][],
  constant: any[][],
  units: any,
): any[][] {
  return call("DIAMETER_FOR", [flow, pressure, constant, units]);
}
