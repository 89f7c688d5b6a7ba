import { unboxedFlow } from "../src/formulas";
import { estimateUnboxed, requireLine, unboxedBudget, usualConstant } from "../src/job";
import { manometers, readable, zeroOrMore } from "./manometer";
import { fromError } from "./problem";
import { pick, Rows } from "./rows";
import { aboveZero, readUnits } from "./units";

/**
 * Flow that a fan moves without the box: readings with two openings, carried on to no box pressure.
 * @customfunction UNBOXED_FLOW
 * @helpurl https://localhost:3443/help/unboxed-flow.html
 * @param {any[][]} area Open area of one reading, above 0, in² (cm² for "si").
 * @param {any[][]} pressure Its pressure, room minus box, above 0, Pa.
 * @param {any[][]} area2 Open area of the other reading.
 * @param {any[][]} pressure2 Its pressure, Pa; twice the first or half of it, or further apart.
 * @param {any[][]} [constant] Flow constant; 1.07 where left out (its twin for "si").
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} Flow at no box pressure, cfm (L/s for "si"): worked out, not measured.
 */
export function unboxedFlowOf(
  area: any[][],
  pressure: any[][],
  area2: any[][],
  pressure2: any[][],
  constant: any[][],
  units: any,
): any[][] {
  const usual = usualConstant[readUnits(units)];
  const rows = new Rows({ area, pressure, area2, pressure2, constant });
  const given = twoReadings(rows, usual);
  const flows = rows.values(unboxedFlow, given);
  return rows.result((i) => pick(flows, i));
}

/**
 * Standard spread of what UNBOXED_FLOW gives, both readings being of one manometer.
 * @customfunction UNBOXED_SPREAD
 * @helpurl https://localhost:3443/help/unboxed-spread.html
 * @param {any[][]} area Open area of one reading, above 0, in² (cm² for "si").
 * @param {any[][]} pressure Its pressure, room minus box, above 0, Pa.
 * @param {any[][]} area2 Open area of the other reading.
 * @param {any[][]} pressure2 Its pressure, Pa; twice the first or half of it, or further apart.
 * @param {any[][]} constant Flow constant; with nothing between the commas 1.07 (its twin for "si").
 * @param {any[][]} meterPercent Limit of the manometer, % of the reading.
 * @param {any[][]} meterFloor Least limit of the manometer, Pa; the larger of the two holds.
 * @param {any[][]} areaLimit Half width of the first area's limits, as AREA_LIMIT gives it.
 * @param {any[][]} areaLimit2 Half width of the other area's limits.
 * @param {any[][]} constantSpread Standard spread of the constant, %.
 * @param {any[][]} [resolution] One step of the manometer's display, Pa.
 * @param {any[][]} [zeroLimit] How far its zero may be off each way, Pa.
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} Standard spread of the flow, cfm (L/s for "si").
 */
export function unboxedSpreadOf(
  area: any[][],
  pressure: any[][],
  area2: any[][],
  pressure2: any[][],
  constant: any[][],
  meterPercent: any[][],
  meterFloor: any[][],
  areaLimit: any[][],
  areaLimit2: any[][],
  constantSpread: any[][],
  resolution: any[][],
  zeroLimit: any[][],
  units: any,
): any[][] {
  const usual = usualConstant[readUnits(units)];
  const rows = new Rows({
    area,
    pressure,
    area2,
    pressure2,
    constant,
    meterPercent,
    meterFloor,
    areaLimit,
    areaLimit2,
    constantSpread,
    resolution,
    zeroLimit,
  });
  const { A, P, A2, P2, K } = twoReadings(rows, usual);
  const a = rows.numbers("areaLimit", { refuse: zeroOrMore });
  const a2 = rows.numbers("areaLimit2", { refuse: zeroOrMore });
  const k = rows.numbers("constantSpread", { refuse: zeroOrMore });
  const meterOf = manometers(rows);
  return rows.result((i) => {
    const first = { area: pick(A, i), areaLimit: pick(a, i), pressure: pick(P, i) };
    const second = { area: pick(A2, i), areaLimit: pick(a2, i), pressure: pick(P2, i) };
    const constants = { constant: pick(K, i), constantSpread: pick(k, i) };
    return unboxedBudget({ first, second, ...constants, ...meterOf(i) }).u;
  });
}

/**
 * Estimate of the flow without the box from one reading and two points of the fan's rating.
 * @customfunction UNBOXED_ESTIMATE
 * @helpurl https://localhost:3443/help/unboxed-estimate.html
 * @param {any[][]} flow Flow read with the box, above 0, cfm or L/s.
 * @param {any[][]} pressure Box pressure of the reading, room minus box, above 0, Pa.
 * @param {any[][]} ratedFlow Rated flow at one pressure, in the unit of the flow.
 * @param {any[][]} ratedPressure That pressure, Pa; 0.1 in of water is 24.9 Pa.
 * @param {any[][]} ratedFlow2 Rated flow at another pressure.
 * @param {any[][]} ratedPressure2 That pressure, Pa; 0.25 in of water is 62.3 Pa.
 * @returns {any[][]} Estimated flow at no box pressure, in the unit of the flow: never a measured value.
 */
export function unboxedEstimateOf(
  flow: any[][],
  pressure: any[][],
  ratedFlow: any[][],
  ratedPressure: any[][],
  ratedFlow2: any[][],
  ratedPressure2: any[][],
): any[][] {
  const rows = new Rows({
    flow,
    pressure,
    ratedFlow,
    ratedPressure,
    ratedFlow2,
    ratedPressure2,
  });
  const Q = rows.numbers("flow", { blank: "nothing yet", refuse: aboveZero });
  const P = rows.numbers("pressure", { blank: "nothing yet", refuse: readable });
  const flows = [
    rows.numbers("ratedFlow", { refuse: zeroOrMore }),
    rows.numbers("ratedFlow2", { refuse: zeroOrMore }),
  ] as const;
  const pressures = [
    rows.numbers("ratedPressure", { refuse: zeroOrMore }),
    rows.numbers("ratedPressure2", { refuse: zeroOrMore }),
  ] as const;
  return rows.result((i) => {
    const rated = (n: 0 | 1) => ({ flow: pick(flows[n], i), pressure: pick(pressures[n], i) });
    const reading = { flow: pick(Q, i), pressure: pick(P, i) };
    try {
      return estimateUnboxed(reading, [rated(0), rated(1)]).estimate;
    } catch (error) {
      return fromError(error);
    }
  });
}

function twoReadings(rows: Rows, usual: number) {
  const P = rows.numbers("pressure", { blank: "nothing yet", refuse: readable });
  const P2 = rows.numbers("pressure2", { blank: "nothing yet", refuse: readable });
  const A = rows.numbers("area", { refuse: aboveZero });
  const A2 = rows.numbers("area2", { refuse: aboveZero });
  const K = rows.numbers("constant", { otherwise: usual, refuse: aboveZero });
  for (let i = 0; i < rows.length; i++)
    try {
      requireLine(
        { area: pick(A, i), pressure: pick(P, i) },
        { area: pick(A2, i), pressure: pick(P2, i) },
      );
    } catch (error) {
      rows.refuse(i, fromError(error));
    }
  return { K, A, P, A2, P2 };
}
