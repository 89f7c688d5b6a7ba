import { call } from "../../src/rules";

/**
 * Whether supply and exhaust of a dwelling count as balanced under an edition.
 * @customfunction BALANCE
 * @helpurl https://localhost:3443/help/balance.html
 * @param {any[][]} edition Edition, such as IRC-2021: one cell or a range.
 * @param {any[][]} supply Sum of the supply flows, cfm (L/s for "si").
 * @param {any[][]} exhaust Sum of the exhaust flows that run with it.
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} "balanced", "not balanced", "by one definition" or "no rule".
 */
export function BALANCE(edition: any[][], supply: any[][], exhaust: any[][], units: any): any[][] {
  return call("BALANCE", [edition, supply, exhaust, units]);
}
