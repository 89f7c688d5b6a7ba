import { call } from "../../src/rules";

/**
 * Constant of a box from paired readings: the slope of the reference flows against area × √pressure.
 * @customfunction PAIR_CONSTANT
 * @helpurl https://localhost:3443/help/pair-constant.html
 * @param {any[][]} areas Open areas, one a pair, in² (cm²).
 * @param {any[][]} pressures Box pressures, room minus box, Pa: as many.
 * @param {any[][]} references Reference flows, cfm (L/s): as many.
 * @returns {any[][]} Constant, its standard spread and degrees of freedom, side by side.
 */
export function PAIR_CONSTANT(areas: any[][], pressures: any[][], references: any[][]): any[][] {
  return call("PAIR_CONSTANT", [areas, pressures, references]);
}
