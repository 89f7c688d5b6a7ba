import { call } from "../../src/rules";

/**
 * Estimate of the flow without the box from one reading and two points of the fan's rating.
 * @customfunction UNBOXED_ESTIMATE
 * @helpurl https://localhost:3443/help/unboxed-estimate.html
 * @param {any[][]} flow Flow read with the box, above 0, cfm or L/s.
 * @param {any[][]} pressure Box pressure of the reading, room minus box, above 0, Pa.
 * @param {any[][]} ratedFlow Rated flow at one pressure, in the unit of the flow.
 * @param {any[][]} ratedPressure That pressure, Pa; 0.1 in of water is 24.9 Pa.
 * @param {any[][]} ratedFlow2 Rated flow at another pressure.
 * @param {any[][]} ratedPressure2 That pressure, Pa; 0.25 in of water is 62.3 Pa.
 * @returns {any[][]} Estimated flow at no box pressure, in the unit of the flow: never a measured value.
 */
export function UNBOXED_ESTIMATE(
  flow: any[][],
  pressure: any[][],
  ratedFlow: any[][],
  ratedPressure: any[][],
  ratedFlow2: any[][],
  ratedPressure2: any[][],
): any[][] {
  return call("UNBOXED_ESTIMATE", [
    flow,
    pressure,
    ratedFlow,
    ratedPressure,
    ratedFlow2,
    ratedPressure2,
  ]);
}
