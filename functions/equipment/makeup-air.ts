import { call } from "../../src/rules";

/**
 * Whether an exhaust of this flow needs makeup air.
 * @customfunction MAKEUP_AIR
 * @helpurl https://localhost:3443/help/makeup-air.html
 * @param {any[][]} edition Code, such as IRC-2021: one cell or a range.
 * @param {any[][]} flow Largest flow of the exhaust, cfm (L/s for "si"). A blank gives a blank.
 * @param {any[][]} [appliance] "yes" if a fuel appliance inside is neither direct-vent nor mechanical-draft, or "no".
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} "needed" or "not needed".
 */
export function MAKEUP_AIR(
  edition: any[][],
  flow: any[][],
  appliance: any[][],
  units: any,
): any[][] {
  return call("MAKEUP_AIR", [edition, flow, appliance, units]);
}
