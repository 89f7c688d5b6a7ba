import { call } from "../../src/rules";

/**
 * Whether a flow meets its required rate. Without a flow "not measured"; with another range status than "in range", "out of range".
 * With a spread it must be sure enough, or the answer is "too close to call".
 * @customfunction VERDICT
 * @helpurl https://localhost:3443/help/verdict.html
 * @param {any[][]} flow Measured flow: one cell or a range.
 * @param {any[][]} required Required rate in the same unit: one cell or a range.
 * @param {any[][]} [status] Range status of the reading, as RANGE_STATUS gives it.
 * @param {any[][]} [spread] Standard spread of the flow; blank or left out: simple acceptance.
 * @param {any[][]} [chance] How sure to be, 0.5 to below 1; 0.95 where blank or left out.
 * @param {any[][]} [freedom] Degrees of freedom of the spread; "infinite" where blank or left out.
 * @returns {any[][]} "meets", "short", "too close to call", "out of range", "not measured" or "none required".
 */
export function VERDICT(
  flow: any[][],
  required: any[][],
  status: any[][],
  spread: any[][],
  chance: any[][],
  freedom: any[][],
): any[][] {
  return call("VERDICT", [flow, required, status, spread, chance, freedom]);
}
