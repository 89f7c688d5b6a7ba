import { rectAreaLimit, roundAreaLimit, unboxedFlow } from "../src/formulas";
import {
  estimateUnboxed,
  flowBudget,
  requireApart,
  unboxedBudget,
  usualConstant,
} from "../src/job";
import { fromError } from "./problem";
import { readingRows } from "./readings";
import { pick, Rows } from "./rows";
import { aboveZero, notNegative, readUnits } from "./units";

const zeroOrMore = (value: number) => (value >= 0 ? undefined : "give a number of 0 or more");
const readable = (value: number) => notNegative(value) ?? aboveZero(value);

/**
 * How far the area of an opening may be off when each size may be off by a tolerance.
 * @customfunction AREA_LIMIT
 * @helpurl https://localhost:3443/help/area-limit.html
 * @param {any[][]} tolerance How far each size may be off, 0 or more, in (cm for "si").
 * @param {any[][]} size1 Diameter or width, above 0, in (cm): one cell or a range.
 * @param {any[][]} [size2] Height, in (cm); blank or left out for a round opening.
 * @returns {any[][]} Half width of the area's limits, in² (cm²).
 */
export function areaLimitOf(tolerance: any[][], size1: any[][], size2: any[][]): any[][] {
  const rows = new Rows({ tolerance, size1, size2 });
  const w = rows.numbers("size1", { blank: "nothing yet", refuse: aboveZero });
  const t = rows.numbers("tolerance", { refuse: zeroOrMore });
  const h = rows.has("size2")
    ? rows.numbers("size2", { blank: "allowed", refuse: aboveZero })
    : Number.NaN;
  const round = rows.values(roundAreaLimit, { t, d: w });
  const rect = rows.values(rectAreaLimit, { t, w, h });
  return rows.result((i) => pick(Number.isNaN(pick(h, i)) ? round : rect, i));
}

/**
 * Spread of a flow read with the box, from all that may be off: three cells side by side a row.
 * @customfunction FLOW_SPREAD
 * @helpurl https://localhost:3443/help/flow-spread.html
 * @param {any[][]} readings Pressures, Pa: a row a fan, its repeats side by side; blanks are passed over.
 * @param {any[][]} area Open area, above 0, in² (cm² for "si"): one cell or a column.
 * @param {any[][]} areaLimit Half width of the area's limits, as AREA_LIMIT gives it.
 * @param {any[][]} constant Flow constant; with nothing between the commas 1.07 (its twin for "si").
 * @param {any[][]} constantSpread Standard spread of the constant, %.
 * @param {any[][]} meterPercent Limit of the manometer, % of the reading.
 * @param {any[][]} meterFloor Least limit of the manometer, Pa; the larger of the two holds.
 * @param {any[][]} [resolution] One step of the manometer's display, Pa.
 * @param {any[][]} [zeroLimit] How far its zero may be off each way, Pa.
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} Standard spread, effective degrees of freedom, and ± at 95 %; flows in cfm (L/s).
 */
export function flowSpreadOf(
  readings: any[][],
  area: any[][],
  areaLimit: any[][],
  constant: any[][],
  constantSpread: any[][],
  meterPercent: any[][],
  meterFloor: any[][],
  resolution: any[][],
  zeroLimit: any[][],
  units: any,
): any[][] {
  const usual = usualConstant[readUnits(units)];
  const repeated = readingRows(readings, readable);
  const rows = new Rows({
    readings: repeated.cells,
    area,
    areaLimit,
    constant,
    constantSpread,
    meterPercent,
    meterFloor,
    resolution,
    zeroLimit,
  });
  const P = rows.numbers("readings", { blank: "nothing yet", refuse: readable });
  const A = rows.numbers("area", { refuse: aboveZero });
  const a = rows.numbers("areaLimit", { refuse: zeroOrMore });
  const K = rows.numbers("constant", { otherwise: usual, refuse: aboveZero });
  const k = rows.numbers("constantSpread", { refuse: zeroOrMore });
  const meterOf = manometers(rows);
  const budget = (i: number) =>
    flowBudget({
      readings: repeated.of(i),
      pressure: pick(P, i),
      area: pick(A, i),
      areaLimit: pick(a, i),
      constant: pick(K, i),
      constantSpread: pick(k, i),
      ...meterOf(i),
    });
  return sideBySide(rows, 3, (i) => {
    const { u, dof, expanded } = budget(i);
    return [u, dof === Infinity ? "infinite" : dof, expanded];
  });
}

/**
 * Flow that a fan moves without the box: readings with two openings, carried on to no box pressure.
 * @customfunction UNBOXED_FLOW
 * @helpurl https://localhost:3443/help/unboxed-flow.html
 * @param {any[][]} area Open area of one reading, above 0, in² (cm² for "si").
 * @param {any[][]} pressure Its pressure, room minus box, above 0, Pa.
 * @param {any[][]} area2 Open area of the other reading.
 * @param {any[][]} pressure2 Its pressure, Pa; well apart from the first.
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
 * @param {any[][]} pressure2 Its pressure, Pa; well apart from the first.
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
      requireApart(pick(P, i), pick(P2, i));
    } catch (error) {
      rows.refuse(i, fromError(error));
    }
  return { K, A, P, A2, P2 };
}

function manometers(rows: Rows) {
  const p = rows.numbers("meterPercent", { refuse: zeroOrMore });
  const f = rows.numbers("meterFloor", { refuse: zeroOrMore });
  const optional = (name: string) => {
    if (!rows.has(name)) return () => undefined;
    const column = rows.numbers(name, { refuse: zeroOrMore });
    return (i: number) => pick(column, i);
  };
  const resolution = optional("resolution");
  const zeroLimit = optional("zeroLimit");
  return (i: number) => ({
    meterPercent: pick(p, i),
    meterFloor: pick(f, i),
    resolution: resolution(i),
    zeroLimit: zeroLimit(i),
  });
}

/** Several cells side by side for each row; a spoiled row holds its fault in each of them. */
export function sideBySide(rows: Rows, width: number, cells: (i: number) => unknown[]): any[][] {
  const found: unknown[][] = [];
  const sides = Array.from({ length: width }, (_, side) =>
    rows
      .result((i) => {
        found[i] ??= cells(i);
        return found[i]?.[side];
      })
      .flat(),
  );
  return (sides[0] ?? []).map((_, i) => sides.map((side) => side[i]));
}
