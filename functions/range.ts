import { nextOpening, rangeStatusColumn, usualWindow } from "../src/job";
import { boxOpenings } from "./box-openings";
import { fromError, missing } from "./problem";
import { pick, Rows } from "./rows";
import { aboveZero } from "./units";

/**
 * Where a pressure stands against the window of an opening: in range, above, below or reversed.
 * @customfunction RANGE_STATUS
 * @helpurl https://localhost:3443/help/range-status.html
 * @param {any[][]} pressure Pressure, room minus box, Pa: one cell or a range. A blank gives a blank.
 * @param {any[][]} [low] Lowest pressure of the window, Pa; 1 where left out.
 * @param {any[][]} [high] Highest pressure of the window, Pa; 8 where left out.
 * @returns {any[][]} "in range", "above", "below" or "reversed".
 */
export function rangeStatusOf(pressure: any[][], low: any[][], high: any[][]): any[][] {
  const rows = new Rows({ pressure, low, high });
  const P = rows.numbers("pressure", { blank: "nothing yet" });
  const from = rows.numbers("low", { otherwise: usualWindow.low, refuse: aboveZero });
  const to = rows.numbers("high", { otherwise: usualWindow.high, refuse: aboveZero });
  const statuses = rangeStatusColumn(P, from, to, rows.length);
  return rows.result((i) => statuses[i]);
}

/**
 * The opening to use next when the pressure is outside the window; "keep" when it is inside.
 * @customfunction NEXT_OPENING
 * @helpurl https://localhost:3443/help/next-opening.html
 * @param {any[][]} pressure Pressure read, Pa, above 0: one cell or a range.
 * @param {any[][]} area Open area in use, in the unit of the areas: one cell or a range.
 * @param {any[][]} labels Labels of all openings, a column of the Boxes sheet.
 * @param {any[][]} areas Their open areas, a column of the same length.
 * @param {any[][]} [box] The box in use, for lists that hold several boxes.
 * @param {any[][]} [boxes] The box of each opening, a column of the same length.
 * @param {any[][]} [low] Lowest pressure of the window, Pa; 1 where left out.
 * @param {any[][]} [high] Highest pressure of the window, Pa; 8 where left out.
 * @returns {any[][]} A label such as A or A+C, or "keep".
 */
export function nextOpeningOf(
  pressure: any[][],
  area: any[][],
  labels: any[][],
  areas: any[][],
  box: any[][],
  boxes: any[][],
  low: any[][],
  high: any[][],
): any[][] {
  const known = boxOpenings(labels, areas, boxes);
  const rows = new Rows({ pressure, area, box, low, high });
  const P = rows.numbers("pressure", { blank: "nothing yet", refuse: aboveZero });
  const A = rows.numbers("area", { refuse: aboveZero });
  const from = rows.numbers("low", { otherwise: usualWindow.low, refuse: aboveZero });
  const to = rows.numbers("high", { otherwise: usualWindow.high, refuse: aboveZero });
  const boxOf = rows.texts("box");
  return rows.result((i) => {
    const own = boxOf(i);
    if (rows.isSpoiled(i)) return missing("the box holds an error");
    const window = { low: pick(from, i), high: pick(to, i) };
    const p = pick(P, i);
    if (p >= window.low && p <= window.high) return "keep";
    try {
      const next = nextOpening(p, pick(A, i), known.of(own), window);
      if (!next) return "no opening in the list";
      return next.inWindow ? next.label : `none in range, nearest ${next.label}`;
    } catch (error) {
      return fromError(error);
    }
  });
}
