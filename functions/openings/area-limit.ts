import { call } from "../../src/rules";

/**
 * How far the area of an opening may be off when each size may be off by a tolerance.
 * @customfunction AREA_LIMIT
 * @helpurl https://localhost:3443/help/area-limit.html
 * @param {any[][]} tolerance How far each size may be off, 0 or more, in (cm for "si").
 * @param {any[][]} size1 Diameter or width, above 0, in (cm): one cell or a range.
 * @param {any[][]} [size2] Height, in (cm); blank or left out for a round opening.
 * @returns {any[][]} Half width of the area's limits, in² (cm²).
 */
export function AREA_LIMIT(tolerance: any[][], size1: any[][], size2: any[][]): any[][] {
  return call("AREA_LIMIT", [tolerance, size1, size2]);
}
