import { call } from "../../src/rules";

/**
 * Flow while on of a fan that runs part of the time.
 * @customfunction ON_RATE
 * @helpurl https://localhost:3443/help/on-rate.html
 * @param {any[][]} edition Edition, such as 62.2-2016 or IRC-2021: one cell or a range.
 * @param {any[][]} rate Continuous rate to make up for, above 0. A blank gives a blank.
 * @param {any[][]} runShare Share of the time on, above 0 and up to 1.
 * @param {any[][]} [cycleHours] Hours from one start to the next; 3 (ASHRAE 62.2) or 4 (IRC) where left out.
 * @returns {any[][]} Flow while on, in the unit of the rate.
 */
export function ON_RATE(
  edition: any[][],
  rate: any[][],
  runShare: any[][],
  cycleHours: any[][],
): any[][] {
  return call("ON_RATE", [edition, rate, runShare, cycleHours]);
}
