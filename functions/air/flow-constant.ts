import { call } from "../../src/rules";

/**
 * Flow constant of an opening from its discharge coefficient and the density of the air.
 * @customfunction FLOW_CONSTANT
 * @helpurl https://localhost:3443/help/flow-constant.html
 * @param {any[][]} coefficient Discharge coefficient, above 0 and at most 1: one cell or a range.
 * @param {any[][]} density Density of the air, kg/m³.
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} Constant for cfm, in² and √Pa (for "si": L/s, cm² and √Pa).
 */
export function FLOW_CONSTANT(coefficient: any[][], density: any[][], units: any): any[][] {
  return call("FLOW_CONSTANT", [coefficient, density, units]);
}
