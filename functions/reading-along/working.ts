import { call } from "../../src/rules";

/**
 * How another FANROW function comes to its result: formula, numbers, result and source in one text.
 * @customfunction WORKING
 * @helpurl https://localhost:3443/help/working.html
 * @param {any} name Name of the function, such as "FLOW", without FANROW.
 * @param {any[][][]} values Its arguments in their order, cells or ranges, as the function takes them.
 * @returns {any[][]} The sum as text.
 */
export function WORKING(name: any, values: any[][][]): any[][] {
  return call("WORKING", [name, values]);
}
