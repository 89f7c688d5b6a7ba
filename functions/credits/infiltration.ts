import { call } from "../../src/rules";

/**
 * Infiltration of a dwelling over a year from its leakage at 50 Pa, before any cap or credit.
 * @customfunction INFILTRATION
 * @helpurl https://localhost:3443/help/infiltration.html
 * @param {any[][]} edition Edition, such as 62.2-2016: one cell or a range.
 * @param {any[][]} leak50 Leakage at 50 Pa, above 0, cfm (L/s for "si"). A blank gives a blank.
 * @param {any[][]} floorArea Floor area, above 0, ft² (m² for "si").
 * @param {any[][]} height From the lowest to the highest point of the pressure boundary above ground, ft (m for "si").
 * @param {any[][]} weather Weather and shielding factor of the place, from your copy of the edition.
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} Infiltration, cfm (L/s for "si").
 */
export function INFILTRATION(
  edition: any[][],
  leak50: any[][],
  floorArea: any[][],
  height: any[][],
  weather: any[][],
  units: any,
): any[][] {
  return call("INFILTRATION", [edition, leak50, floorArea, height, weather, units]);
}
