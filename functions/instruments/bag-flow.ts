import { call } from "../../src/rules";

/**
 * Flow that fills a bag of known volume in the time taken.
 * @customfunction BAG_FLOW
 * @helpurl https://localhost:3443/help/bag-flow.html
 * @param {any[][]} volume Volume of the full bag, above 0, ft³ (L for "si"): one cell or a range.
 * @param {any[][]} seconds Time to fill it, above 0, s: one cell or a range.
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} Flow, cfm (L/s for "si").
 */
export function BAG_FLOW(volume: any[][], seconds: any[][], units: any): any[][] {
  return call("BAG_FLOW", [volume, seconds, units]);
}
