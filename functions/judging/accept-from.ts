import { call } from "../../src/rules";

/**
 * Least measured flow from which the required rate is met with a wanted chance.
 * @customfunction ACCEPT_FROM
 * @helpurl https://localhost:3443/help/accept-from.html
 * @param {any[][]} required Required rate: one cell or a range.
 * @param {any[][]} spread Standard spread of the flow, 0 or more, in the unit of the rate.
 * @param {any[][]} [chance] How sure to be, 0.5 to below 1; 0.95 where left out.
 * @param {any[][]} [freedom] Degrees of freedom of the spread; "infinite" where blank or left out.
 * @returns {any[][]} Acceptance limit in the unit of the rate.
 */
export function ACCEPT_FROM(
  required: any[][],
  spread: any[][],
  chance: any[][],
  freedom: any[][],
): any[][] {
  return call("ACCEPT_FROM", [required, spread, chance, freedom]);
}
