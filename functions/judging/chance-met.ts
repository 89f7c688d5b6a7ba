import { call } from "../../src/rules";

/**
 * Chance that the flow truly meets the required rate, given how far the reading may be off.
 * @customfunction CHANCE_MET
 * @helpurl https://localhost:3443/help/chance-met.html
 * @param {any[][]} flow Measured flow: one cell or a range.
 * @param {any[][]} spread Standard spread of the flow, 0 or more, in its unit.
 * @param {any[][]} required Required rate in the same unit.
 * @param {any[][]} [freedom] Degrees of freedom of the spread; "infinite" where blank or left out.
 * @returns {any[][]} Chance, 0 to 1.
 */
export function CHANCE_MET(
  flow: any[][],
  spread: any[][],
  required: any[][],
  freedom: any[][],
): any[][] {
  return call("CHANCE_MET", [flow, spread, required, freedom]);
}
