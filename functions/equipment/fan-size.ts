import { call } from "../../src/rules";

/**
 * Smallest rated flow of a list that still meets a required rate after a margin.
 * @customfunction FAN_SIZE
 * @helpurl https://localhost:3443/help/fan-size.html
 * @param {any[][]} required Required rate, above 0: one cell or a range.
 * @param {any[][]} margin Margin to add to the rate, %, 0 or more; none where blank.
 * @param {any[][]} ratings Rated flows to choose from, in the unit of the rate: a row or a column.
 * @returns {any[][]} Rated flow to buy, in the unit of the rate.
 */
export function FAN_SIZE(required: any[][], margin: any[][], ratings: any[][]): any[][] {
  return call("FAN_SIZE", [required, margin, ratings]);
}
