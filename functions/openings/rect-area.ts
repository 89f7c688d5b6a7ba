import { call } from "../../src/rules";

/**
 * Area of a rectangular opening from its width and height. in gives in², cm gives cm².
 * @customfunction RECT_AREA
 * @helpurl https://localhost:3443/help/rect-area.html
 * @param {any[][]} width Width of the opening, above 0: one cell or a range.
 * @param {any[][]} height Height of the opening, above 0: one cell or a range.
 * @returns {any[][]} Open area.
 */
export function RECT_AREA(width: any[][], height: any[][]): any[][] {
  return call("RECT_AREA", [width, height]);
}
