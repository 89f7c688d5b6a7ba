import { call } from "../../src/rules";

/**
 * Longest exhaust duct by the code's table, once its elbows are taken off.
 * @customfunction DUCT_LIMIT
 * @helpurl https://localhost:3443/help/duct-limit.html
 * @param {any[][]} edition Code, such as IRC-2021: one cell or a range.
 * @param {any[][]} ductKind "flex" or "smooth".
 * @param {any[][]} diameter Duct diameter, in.
 * @param {any[][]} ratedFlow Rated flow of the fan at 0.25 in w.c., cfm. A blank gives a blank.
 * @param {any[][]} [elbows] Number of elbows; 0 where left out.
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} Length, ft, or "no limit" or "not allowed".
 */
export function DUCT_LIMIT(
  edition: any[][],
  ductKind: any[][],
  diameter: any[][],
  ratedFlow: any[][],
  elbows: any[][],
  units: any,
): any[][] {
  return call("DUCT_LIMIT", [edition, ductKind, diameter, ratedFlow, elbows, units]);
}
