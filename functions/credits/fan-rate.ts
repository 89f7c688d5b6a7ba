import { call } from "../../src/rules";

/**
 * What fans must still move after an edition's infiltration credit; never below 0.
 * @customfunction FAN_RATE
 * @helpurl https://localhost:3443/help/fan-rate.html
 * @param {any[][]} edition Edition, such as 62.2-2019: one cell or a range.
 * @param {any[][]} total Required total rate, above 0. A blank gives a blank.
 * @param {any[][]} infiltration Infiltration in the same unit, as INFILTRATION gives it.
 * @param {any[][]} [exposedShare] Share of the envelope that faces outside, 0 to 1; 1 (detached) where left out.
 * @param {any[][]} [balanced] "yes" for balanced fans; "no" where left out.
 * @param {any[][]} [work] "new" or "existing"; "new" where left out.
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @param {any[][]} [floorArea] Floor area, ft² (m² for "si"), for existing dwellings under 62.2-2010.
 * @returns {any[][]} Rate for the fans, in the unit of the total.
 */
export function FAN_RATE(
  edition: any[][],
  total: any[][],
  infiltration: any[][],
  exposedShare: any[][],
  balanced: any[][],
  work: any[][],
  units: any,
  floorArea: any[][],
): any[][] {
  return call("FAN_RATE", [
    edition,
    total,
    infiltration,
    exposedShare,
    balanced,
    work,
    units,
    floorArea,
  ]);
}
