import { bagFlowIp, bagFlowSi } from "../src/formulas";
import { deviceBudget, deviceFlow } from "../src/job";
import { missing } from "./problem";
import { readingRows } from "./readings";
import { pick, Rows } from "./rows";
import { sideBySide } from "./side-by-side";
import { aboveZero, readUnits } from "./units";

const zeroOrMore = (value: number) => (value >= 0 ? undefined : "give a number of 0 or more");

/** A limit that is far above any exponent there is; it catches a constant typed in its place. */
const steepest = 3;
const beExponent = (value: number) =>
  value !== 0 && Math.abs(value) <= steepest
    ? undefined
    : "give 1 for a flow, 0.5 for a pressure, -1 for a time, or what the device's record says";

/**
 * Flow from the reading of any device: constant × reading ^ exponent.
 * @customfunction DEVICE_FLOW
 * @helpurl https://localhost:3443/help/device-flow.html
 * @param {any[][]} reading What the device shows, above 0; 0 too where the exponent is above 0.
 * @param {any[][]} constant Constant of the device at its setting, above 0.
 * @param {any[][]} [exponent] Exponent of the device; 1 where left out: the reading is a flow.
 * @returns {any[][]} Flow in the unit of the constant.
 */
export function deviceFlowOf(reading: any[][], constant: any[][], exponent: any[][]): any[][] {
  const rows = new Rows({ reading, constant, exponent });
  const r = rows.numbers("reading", { blank: "nothing yet", refuse: zeroOrMore });
  const K = rows.numbers("constant", { refuse: aboveZero });
  const n = rows.numbers("exponent", { otherwise: 1, refuse: beExponent });
  return rows.result((i) => deviceFlow(pick(r, i), pick(K, i), pick(n, i)));
}

/**
 * Flow that fills a bag of known volume in the time taken.
 * @customfunction BAG_FLOW
 * @helpurl https://localhost:3443/help/bag-flow.html
 * @param {any[][]} volume Volume of the full bag, above 0, ft³ (L for "si"): one cell or a range.
 * @param {any[][]} seconds Time to fill it, above 0, s: one cell or a range.
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} Flow, cfm (L/s for "si").
 */
export function bagFlowOf(volume: any[][], seconds: any[][], units: any): any[][] {
  const formula = readUnits(units) === "ip" ? bagFlowIp : bagFlowSi;
  const rows = new Rows({ volume, seconds });
  const V = rows.numbers("volume", { refuse: aboveZero });
  const t = rows.numbers("seconds", { blank: "nothing yet", refuse: aboveZero });
  const flows = rows.values(formula, { V, t });
  return rows.result((i) => pick(flows, i));
}

/**
 * Spread of a flow read with a device, from its limits and the repeats: three cells a row.
 * @customfunction DEVICE_SPREAD
 * @helpurl https://localhost:3443/help/device-spread.html
 * @param {any[][]} readings What the device showed: a row a fan, its repeats side by side; blanks are passed over.
 * @param {any[][]} constant Constant of the device at its setting, above 0.
 * @param {any[][]} exponent Exponent of the device; 1 for a device that shows a flow.
 * @param {any[][]} percent Limit of the device, % of the flow; blank where it has none.
 * @param {any[][]} floor Least limit, in the unit of the flow; the larger of the two holds.
 * @param {any[][]} [resolution] One step of the device's display, in the unit of the reading.
 * @returns {any[][]} Standard spread, effective degrees of freedom, and ± at 95 %, side by side.
 */
export function deviceSpreadOf(
  readings: any[][],
  constant: any[][],
  exponent: any[][],
  percent: any[][],
  floor: any[][],
  resolution: any[][],
): any[][] {
  const repeated = readingRows(readings, aboveZero);
  const rows = new Rows({
    readings: repeated.cells,
    constant,
    exponent,
    percent,
    floor,
    resolution,
  });
  rows.numbers("readings", { blank: "nothing yet", refuse: aboveZero });
  const K = rows.numbers("constant", { refuse: aboveZero });
  const n = rows.numbers("exponent", { refuse: beExponent });
  const optional = (name: string) =>
    rows.has(name) ? rows.numbers(name, { blank: "allowed", refuse: zeroOrMore }) : Number.NaN;
  const [share, least, step] = [optional("percent"), optional("floor"), optional("resolution")];
  return sideBySide(rows, 3, (i) => {
    if (Number.isNaN(pick(share, i)) && Number.isNaN(pick(least, i))) {
      const none = missing("percent and floor are blank: give at least one limit of the device");
      return [none, none, none];
    }
    const { u, dof, expanded } = deviceBudget(repeated.of(i), pick(K, i), pick(n, i), {
      percent: pick(share, i) || 0,
      floor: pick(least, i) || 0,
      resolution: pick(step, i) || 0,
    });
    return [u, dof === Infinity ? "infinite" : dof, expanded];
  });
}
