import { call } from "../../src/rules";

/**
 * Area of a round opening from its diameter. in gives in², cm gives cm².
 * @customfunction ROUND_AREA
 * @helpurl https://localhost:3443/help/round-area.html
 * @param {any[][]} diameter Diameter of the hole, above 0: one cell or a range.
 * @returns {any[][]} Open area.
 */
export function ROUND_AREA(diameter: any[][]): any[][] {
  return call("ROUND_AREA", [diameter]);
}
