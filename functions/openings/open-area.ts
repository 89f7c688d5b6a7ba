import { call } from "../../src/rules";

/**
 * Total area of the openings in use, such as A+C, looked up among the openings of a box.
 * @customfunction OPEN_AREA
 * @helpurl https://localhost:3443/help/open-area.html
 * @param {any[][]} openings Labels of the openings in use, joined by +: one cell or a range.
 * @param {any[][]} labels Labels of all openings, a column of the Boxes sheet.
 * @param {any[][]} areas Their open areas, a column of the same length.
 * @param {any[][]} [box] The box in use, for lists that hold several boxes.
 * @param {any[][]} [boxes] The box of each opening, a column of the same length.
 * @returns {any[][]} Open area, in the unit of the areas.
 */
export function OPEN_AREA(
  openings: any[][],
  labels: any[][],
  areas: any[][],
  box: any[][],
  boxes: any[][],
): any[][] {
  return call("OPEN_AREA", [openings, labels, areas, box, boxes]);
}
