import { call } from "../../src/rules";

/**
 * How far a box is off on average, from flows read in pairs with a reference.
 * @customfunction PAIR_BIAS
 * @helpurl https://localhost:3443/help/pair-bias.html
 * @param {any[][]} boxFlows Flows by the box, one a pair.
 * @param {any[][]} referenceFlows Flows by the reference in the same unit: as many.
 * @returns {any[][]} Mean error in %, standard deviation of the errors in %, number of pairs.
 */
export function PAIR_BIAS(boxFlows: any[][], referenceFlows: any[][]): any[][] {
  return call("PAIR_BIAS", [boxFlows, referenceFlows]);
}
