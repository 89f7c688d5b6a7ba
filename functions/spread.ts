import { rectAreaLimit, roundAreaLimit } from "../src/formulas";
import { flowBudget, usualConstant } from "../src/job";
import { manometers, readable, zeroOrMore } from "./manometer";
import { readingRows } from "./readings";
import { pick, Rows } from "./rows";
import { sideBySide } from "./side-by-side";
import { aboveZero, readUnits } from "./units";

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
