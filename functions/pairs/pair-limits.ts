import { call } from "../../src/rules";

/**
 * Limits within which some 95 % of a box's errors lie, from flows read in pairs with a reference.
 * @customfunction PAIR_LIMITS
 * @helpurl https://localhost:3443/help/pair-limits.html
 * @param {any[][]} boxFlows Flows by the box, one a pair.
 * @param {any[][]} referenceFlows Flows by the reference in the same unit: as many.
 * @returns {any[][]} Low limit, high limit and largest error without its sign, all in %.
 */
export function PAIR_LIMITS(boxFlows: any[][], referenceFlows: any[][]): any[][] {
  return call("PAIR_LIMITS", [boxFlows, referenceFlows]);
}
