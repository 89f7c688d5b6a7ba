import { call } from "../../src/rules";

/**
 * Every number that the editions and rules rest on, one a row below a row of headings.
 * @customfunction EDITIONS
 * @helpurl https://localhost:3443/help/editions.html
 * @param {any[][]} [edition] One edition or code, such as 62.2-2016; all of them where left out.
 * @returns {any[][]} Edition, what, value, unit, work, clause, mark, document, date and note, side by side.
 */
export function EDITIONS(edition: any[][]): any[][] {
  return call("EDITIONS", [edition]);
}
