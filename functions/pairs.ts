import { oneValue } from "../src/algebra";
import { openingStrength } from "../src/formulas";
import { agreement, percentDifferences, throughOrigin } from "../src/spread";
import { invalid, missing } from "./problem";
import { isBlank, isError, toMatrix } from "./rows";
import { aboveZero } from "./units";

/**
 * Constant of a box from paired readings: the slope of the reference flows against area × √pressure.
 * @customfunction PAIR_CONSTANT
 * @helpurl https://localhost:3443/help/pair-constant.html
 * @param {any[][]} areas Open areas, one a pair, in² (cm²).
 * @param {any[][]} pressures Box pressures, room minus box, Pa: as many.
 * @param {any[][]} references Reference flows, cfm (L/s): as many.
 * @returns {any[][]} Constant, its standard spread and degrees of freedom, side by side.
 */
export function pairConstantOf(areas: any[][], pressures: any[][], references: any[][]): any[][] {
  const found = pairs({ areas, pressures, references }, ["pressures", "references"]);
  if (!Array.isArray(found)) return [[found, found, found]];
  if (found.length === 0) return [["", "", ""]];
  const strengths = found.map(([A, P]) => oneValue(openingStrength, { A, P } as Given));
  const { slope, slopeError, dof } = throughOrigin(strengths, lastOf(found));
  return row(slope, slopeError, dof);
}

type Given = Record<string, number>;

/**
 * How far a box is off on average, from flows read in pairs with a reference.
 * @customfunction PAIR_BIAS
 * @helpurl https://localhost:3443/help/pair-bias.html
 * @param {any[][]} boxFlows Flows by the box, one a pair.
 * @param {any[][]} referenceFlows Flows by the reference in the same unit: as many.
 * @returns {any[][]} Mean error in %, standard deviation of the errors in %, number of pairs.
 */
export function pairBiasOf(boxFlows: any[][], referenceFlows: any[][]): any[][] {
  return errorsOf(boxFlows, referenceFlows, ({ bias, sd, n }) => [bias, sd, n]);
}

/**
 * Limits within which some 95 % of a box's errors lie, from flows read in pairs with a reference.
 * @customfunction PAIR_LIMITS
 * @helpurl https://localhost:3443/help/pair-limits.html
 * @param {any[][]} boxFlows Flows by the box, one a pair.
 * @param {any[][]} referenceFlows Flows by the reference in the same unit: as many.
 * @returns {any[][]} Low limit, high limit and largest error without its sign, all in %.
 */
export function pairLimitsOf(boxFlows: any[][], referenceFlows: any[][]): any[][] {
  return errorsOf(boxFlows, referenceFlows, ({ low, high, largest }) => [low, high, largest]);
}

function errorsOf(
  boxFlows: any[][],
  referenceFlows: any[][],
  cells: (found: ReturnType<typeof agreement>) => [number, number, number],
): any[][] {
  const found = pairs({ boxFlows, referenceFlows }, ["boxFlows", "referenceFlows"]);
  if (!Array.isArray(found)) return [[found, found, found]];
  if (found.length === 0) return [["", "", ""]];
  const measured = found.map(([Q]) => Q as number);
  return row(...cells(agreement(percentDifferences(measured, lastOf(found)))));
}

const lastOf = (found: readonly (readonly number[])[]) =>
  found.map((pair) => pair.at(-1) as number);

/** A blank for what too few pairs cannot tell. */
const row = (...cells: number[]): any[][] => [
  cells.map((cell) =>
    Number.isNaN(cell) ? "" : Number.isFinite(cell) ? cell : invalid("the result is not a number"),
  ),
];

/**
 * The pairs of some ranges of one length, in their order; a pair where one of the `read` is blank
 * is passed over. A cell that will not do gives its error: one bad cell spoils the whole, since all
 * pairs make one result.
 */
function pairs(
  ranges: Readonly<Record<string, unknown>>,
  read: readonly string[],
): number[][] | object {
  const names = Object.keys(ranges);
  const cells = names.map((name) => toMatrix(ranges[name]).flat());
  const lengths = cells.map((range) => range.length);
  if (new Set(lengths).size > 1)
    throw invalid(
      `${names.map((name, i) => `${lengths[i]} ${name}`).join(", ")}: give ranges of one length`,
    );
  const found: number[][] = [];
  for (let i = 0; i < (lengths[0] ?? 0); i++) {
    const pair = cells.map((range) => range[i]);
    if (names.some((name, n) => read.includes(name) && isBlank(pair[n]))) continue;
    const faults = names.map((name, n) => faultOf(pair[n], `${name}, pair ${i + 1}`));
    const fault = faults.find((each) => each !== undefined);
    if (fault) return fault;
    found.push(pair as number[]);
  }
  return found;
}

function faultOf(cell: unknown, place: string): object | undefined {
  if (isError(cell)) return cell;
  if (isBlank(cell)) return missing(`${place} is blank`);
  if (typeof cell === "string") return invalid(`${place}: "${cell}" is text: type it as a number`);
  if (typeof cell !== "number" || !Number.isFinite(cell))
    return invalid(`${place}: ${String(cell)} is not a number`);
  const reason = aboveZero(cell);
  return reason ? invalid(`${place}: ${cell}: ${reason}`) : undefined;
}
