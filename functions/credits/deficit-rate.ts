import { call } from "../../src/rules";

/**
 * Dwelling rate raised by the edition's part of its rooms' deficits.
 * @customfunction DEFICIT_RATE
 * @helpurl https://localhost:3443/help/deficit-rate.html
 * @param {any[][]} edition Edition, such as 62.2-2016: one cell or a range.
 * @param {any[][]} total Required total rate of the dwelling, above 0. A blank gives a blank.
 * @param {any[][]} deficits Deficits of all its rooms in the same unit, as DEFICIT gives them.
 * @returns {any[][]} Raised rate, in the unit of the total.
 */
export function DEFICIT_RATE(edition: any[][], total: any[][], deficits: any[][]): any[][] {
  return call("DEFICIT_RATE", [edition, total, deficits]);
}
