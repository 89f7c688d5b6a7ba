import { call } from "../../src/rules";

/**
 * Least ventilation rate that an edition asks of a whole dwelling, before any credit.
 * @customfunction DWELLING_RATE
 * @helpurl https://localhost:3443/help/dwelling-rate.html
 * @param {any[][]} edition Edition, such as 62.2-2016 or IRC-2021: one cell or a range.
 * @param {any[][]} floorArea Floor area, above 0, ft² (m² for "si"): one cell or a range.
 * @param {any[][]} bedrooms Number of bedrooms, 0 or more: one cell or a range.
 * @param {any[][]} [method] "equation", "table", "larger" or "bounded"; the edition's usual one where left out.
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @param {any[][]} [occupants] People known to live there, where they are more than bedrooms plus one.
 * @returns {any[][]} Required rate, cfm (L/s for "si").
 */
export function DWELLING_RATE(
  edition: any[][],
  floorArea: any[][],
  bedrooms: any[][],
  method: any[][],
  units: any,
  occupants: any[][],
): any[][] {
  return call("DWELLING_RATE", [edition, floorArea, bedrooms, method, units, occupants]);
}
