import { call } from "../../src/rules";

/**
 * Flow of reference air that carries the same mass as an actual flow: for use beside fan ratings.
 * @customfunction STANDARD_FLOW
 * @helpurl https://localhost:3443/help/standard-flow.html
 * @param {any[][]} flow Actual flow, 0 or more, cfm or L/s: one cell or a range.
 * @param {any[][]} density Density of the air, kg/m³, as AIR_DENSITY gives it.
 * @param {any[][]} [reference] Reference density, kg/m³; 1.2 where left out.
 * @returns {any[][]} Flow at the reference density, in the unit of the flow.
 */
export function STANDARD_FLOW(flow: any[][], density: any[][], reference: any[][]): any[][] {
  return call("STANDARD_FLOW", [flow, density, reference]);
}
