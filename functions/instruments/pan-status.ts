import { call } from "../../src/rules";

/**
 * Whether the duct behind a register is tight, by pressure pan readings with the house at 50 Pa.
 * @customfunction PAN_STATUS
 * @helpurl https://localhost:3443/help/pan-status.html
 * @param {any[][]} readings Pan readings, Pa: a row a register, its repeats side by side; blanks are passed over.
 * @param {any[][]} [limit] Mean up to which the duct is tight, Pa; 1 where blank or left out.
 * @param {any[][]} [span] Most that readings of one register may differ, Pa; 0.5 where blank or left out.
 * @returns {any[][]} "tight", "leaks", or "repeat" where the readings differ too much.
 */
export function PAN_STATUS(readings: any[][], limit: any[][], span: any[][]): any[][] {
  return call("PAN_STATUS", [readings, limit, span]);
}
