import { flowFromPressure, pressureFromFlow } from "../src/formulas";
import { usualConstant, usualWindow } from "../src/job";
import { pick, Rows } from "./rows";
import { sideBySide } from "./side-by-side";
import { aboveZero, notNegative, readUnits } from "./units";

/**
 * Flow through an opening: constant × area × √pressure. A blank pressure gives a blank.
 * @customfunction FLOW
 * @helpurl https://localhost:3443/help/flow.html
 * @param {any[][]} area Open area, above 0, in² (cm² for "si"): one cell or a range.
 * @param {any[][]} pressure Pressure, room minus box, Pa, 0 or more: one cell or a range.
 * @param {any[][]} [constant] Flow constant; 1.07 where left out (its twin for "si").
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} Flow, cfm (L/s for "si").
 */
export function flowOf(area: any[][], pressure: any[][], constant: any[][], units: any): any[][] {
  const usual = usualConstant[readUnits(units)];
  const rows = new Rows({ area, pressure, constant });
  const P = rows.numbers("pressure", { blank: "nothing yet", refuse: notNegative });
  const A = rows.numbers("area", { refuse: aboveZero });
  const K = rows.numbers("constant", { otherwise: usual, refuse: aboveZero });
  const flows = rows.values(flowFromPressure, { A, P, K });
  return rows.result((i) => pick(flows, i));
}

/**
 * Pressure across an opening at a given flow: (flow ÷ (constant × area))².
 * @customfunction BOX_PRESSURE
 * @helpurl https://localhost:3443/help/box-pressure.html
 * @param {any[][]} area Open area, above 0, in² (cm² for "si"): one cell or a range.
 * @param {any[][]} flow Flow, 0 or more, cfm (L/s for "si"): one cell or a range.
 * @param {any[][]} [constant] Flow constant; 1.07 where left out (its twin for "si").
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} Pressure, Pa.
 */
export function boxPressure(area: any[][], flow: any[][], constant: any[][], units: any): any[][] {
  const usual = usualConstant[readUnits(units)];
  const rows = new Rows({ area, flow, constant });
  const refuse = (value: number) => (value >= 0 ? undefined : "give a flow of 0 or more");
  const Q = rows.numbers("flow", { blank: "nothing yet", refuse });
  const A = rows.numbers("area", { refuse: aboveZero });
  const K = rows.numbers("constant", { otherwise: usual, refuse: aboveZero });
  const pressures = rows.values(pressureFromFlow, { A, Q, K });
  return rows.result((i) => pick(pressures, i));
}

/**
 * Lowest and highest flow that an opening can read, two cells side by side for each area.
 * @customfunction REACH
 * @helpurl https://localhost:3443/help/reach.html
 * @param {any[][]} area Open area, above 0, in² (cm² for "si"): one cell or a column.
 * @param {any[][]} [constant] Flow constant; 1.07 where left out (its twin for "si").
 * @param {any[][]} [low] Lowest pressure of the window, Pa; 1 where left out.
 * @param {any[][]} [high] Highest pressure of the window, Pa; 8 where left out.
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} Lowest and highest flow, cfm (L/s for "si").
 */
export function reach(
  area: any[][],
  constant: any[][],
  low: any[][],
  high: any[][],
  units: any,
): any[][] {
  const usual = usualConstant[readUnits(units)];
  const rows = new Rows({ area, constant, low, high });
  const A = rows.numbers("area", { blank: "nothing yet", refuse: aboveZero });
  const K = rows.numbers("constant", { otherwise: usual, refuse: aboveZero });
  const ends = [
    rows.numbers("low", { otherwise: usualWindow.low, refuse: aboveZero }),
    rows.numbers("high", { otherwise: usualWindow.high, refuse: aboveZero }),
  ].map((P) => rows.values(flowFromPressure, { A, P, K }));
  return sideBySide(rows, 2, (i) => ends.map((flows) => pick(flows, i)));
}
