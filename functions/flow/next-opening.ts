import { call } from "../../src/rules";

/**
 * The opening to use next when the pressure is outside the window; "keep" when it is inside.
 * @customfunction NEXT_OPENING
 * @helpurl https://localhost:3443/help/next-opening.html
 * @param {any[][]} pressure Pressure read, Pa, above 0: one cell or a range.
 * @param {any[][]} area Open area in use, in the unit of the areas: one cell or a range.
 * @param {any[][]} labels Labels of all openings, a column of the Boxes sheet.
 * @param {any[][]} areas Their open areas, a column of the same length.
 * @param {any[][]} [box] The box in use, for lists that hold several boxes.
 * @param {any[][]} [boxes] The box of each opening, a column of the same length.
 * @param {any[][]} [low] Lowest pressure of the window, Pa; 1 where left out.
 * @param {any[][]} [high] Highest pressure of the window, Pa; 8 where left out.
 * @returns {any[][]} A label such as A or A+C, or "keep".
 */
export function NEXT_OPENING(
  pressure: any[][],
  area: any[][],
  labels: any[][],
  areas: any[][],
  box: any[][],
  boxes: any[][],
  low: any[][],
  high: any[][],
): any[][] {
  return call("NEXT_OPENING", [pressure, area, labels, areas, box, boxes, low, high]);
}
