import { call } from "../../src/rules";

/**
 * The opening to take to a fan whose flow is expected: its pressure comes nearest to 4 Pa, or the middle of the window.
 * @customfunction EXPECTED_OPENING
 * @helpurl https://localhost:3443/help/expected-opening.html
 * @param {any[][]} flow Expected flow, above 0, cfm (L/s for "si"): one cell or a range.
 * @param {any[][]} labels Labels of all openings, a column of the Boxes sheet.
 * @param {any[][]} areas Their open areas, in² (cm² for "si"), a column of the same length.
 * @param {any[][]} [box] The box to take, for lists that hold several boxes.
 * @param {any[][]} [boxes] The box of each opening, a column of the same length.
 * @param {any[][]} [constant] Flow constant; 1.07 where left out (its twin for "si").
 * @param {any[][]} [low] Lowest pressure of the window, Pa; 1 where left out.
 * @param {any[][]} [high] Highest pressure of the window, Pa; 8 where left out.
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} A label such as A or A+C.
 */
export function EXPECTED_OPENING(
  flow: any[][],
  labels: any[][],
  areas: any[][],
  box: any[][],
  boxes: any[][],
  constant: any[][],
  low: any[][],
  high: any[][],
  units: any,
): any[][] {
  return call("EXPECTED_OPENING", [flow, labels, areas, box, boxes, constant, low, high, units]);
}
