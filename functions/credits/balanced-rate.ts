import { call } from "../../src/rules";

/**
 * Dwelling rate where the system is balanced and ducted as the code says, or is not.
 * @customfunction BALANCED_RATE
 * @helpurl https://localhost:3443/help/balanced-rate.html
 * @param {any[][]} edition Edition, such as IRC-2021 or IMC-2021: one cell or a range.
 * @param {any[][]} rate Required dwelling rate, above 0. A blank gives a blank.
 * @param {any[][]} balancedDucted "yes" if balanced and ducted to the rooms that the code names, "one" if only one of the two, or "no".
 * @returns {any[][]} Rate after the reduction, in the unit of the rate.
 */
export function BALANCED_RATE(edition: any[][], rate: any[][], balancedDucted: any[][]): any[][] {
  return call("BALANCED_RATE", [edition, rate, balancedDucted]);
}
