import { expectedOpening, fanSize, usualConstant, usualWindow } from "../src/job";
import { boxOpenings } from "./box-openings";
import { fromError, invalid, missing } from "./problem";
import { isBlank, isError, type Matrix, pick, Rows, toMatrix } from "./rows";
import { aboveZero, readUnits } from "./units";

/**
 * Smallest rated flow of a list that still meets a required rate after a margin.
 * @customfunction FAN_SIZE
 * @helpurl https://localhost:3443/help/fan-size.html
 * @param {any[][]} required Required rate, above 0: one cell or a range.
 * @param {any[][]} margin Margin to add to the rate, %, 0 or more; none where blank.
 * @param {any[][]} ratings Rated flows to choose from, in the unit of the rate: a row or a column.
 * @returns {any[][]} Rated flow to buy, in the unit of the rate.
 */
export function fanSizeOf(required: any[][], margin: any[][], ratings: any[][]): any[][] {
  const list = ratingsIn(ratings);
  const rows = new Rows({ required, margin });
  const R = rows.numbers("required", { blank: "nothing yet", refuse: aboveZero });
  const refuse = (value: number) =>
    value >= 0 ? undefined : "give a margin of 0 or more, in per cent";
  const s = rows.has("margin") ? rows.numbers("margin", { blank: "allowed", refuse }) : 0;
  return rows.result((i) => {
    const { rated, largest } = fanSize(pick(R, i), pick(s, i) || 0, list);
    if (rated !== undefined) return rated;
    return largest === undefined ? "no rating in the list" : `none in the list, largest ${largest}`;
  });
}

/** The ratings of a list; blank cells of it are passed over. */
function ratingsIn(ratings: Matrix): number[] {
  return toMatrix(ratings)
    .flat()
    .filter((cell) => !isBlank(cell))
    .map((cell) => {
      if (isError(cell)) throw cell;
      if (typeof cell === "string")
        throw invalid(`ratings: "${cell}" is text: type it as a number, or leave it out`);
      if (typeof cell !== "number" || !Number.isFinite(cell))
        throw invalid(`ratings: ${String(cell)} is not a number`);
      const reason = aboveZero(cell);
      if (reason) throw invalid(`ratings: ${cell}: ${reason}`);
      return cell;
    });
}

/**
 * The opening to take to a fan whose flow is expected: its pressure comes nearest to 4 Pa.
 * @customfunction EXPECTED_OPENING
 * @helpurl https://localhost:3443/help/expected-opening.html
 * @param {any[][]} flow Expected flow, above 0, cfm (L/s for "si"): one cell or a range.
 * @param {any[][]} labels Labels of all openings, a column of the Boxes sheet.
 * @param {any[][]} areas Their open areas, in² (cm² for "si"), a column of the same length.
 * @param {any[][]} [box] The box to take, for lists that hold several boxes.
 * @param {any[][]} [boxes] The box of each opening, a column of the same length.
 * @param {any[][]} [constant] Flow constant; 1.07 where left out (its twin for "si").
 * @param {any[][]} [low] Lowest pressure of the window, Pa; 1 where left out.
 * @param {any[][]} [high] Highest pressure of the window, Pa; 8 where left out.
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} A label such as A or A+C.
 */
export function expectedOpeningOf(
  flow: any[][],
  labels: any[][],
  areas: any[][],
  box: any[][],
  boxes: any[][],
  constant: any[][],
  low: any[][],
  high: any[][],
  units: any,
): any[][] {
  const usual = usualConstant[readUnits(units)];
  const known = boxOpenings(labels, areas, boxes);
  const rows = new Rows({ flow, box, constant, low, high });
  const Q = rows.numbers("flow", { blank: "nothing yet", refuse: aboveZero });
  const K = rows.numbers("constant", { otherwise: usual, refuse: aboveZero });
  const from = rows.numbers("low", { otherwise: usualWindow.low, refuse: aboveZero });
  const to = rows.numbers("high", { otherwise: usualWindow.high, refuse: aboveZero });
  const boxOf = rows.texts("box");
  return rows.result((i) => {
    const own = boxOf(i);
    if (rows.isSpoiled(i)) return missing("the box holds an error");
    const window = { low: pick(from, i), high: pick(to, i) };
    try {
      const next = expectedOpening(pick(Q, i), pick(K, i), known.of(own), window);
      if (!next) return "no opening in the list";
      return next.inWindow ? next.label : `none in range, nearest ${next.label}`;
    } catch (error) {
      return fromError(error);
    }
  });
}
