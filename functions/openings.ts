import { areaForFlow, diameterForArea, rectArea, roundArea } from "../src/formulas";
import { aimedPressure, areaOf, openingsNamed, usualConstant } from "../src/job";
import { boxOpenings } from "./box-openings";
import { fromError, invalid, missing } from "./problem";
import { type Matrix, pick, Rows } from "./rows";
import { aboveZero, readUnits } from "./units";

/**
 * Area of a round opening from its diameter. in gives in², cm gives cm².
 * @customfunction ROUND_AREA
 * @helpurl https://localhost:3443/help/round-area.html
 * @param {any[][]} diameter Diameter of the hole, above 0: one cell or a range.
 * @returns {any[][]} Open area.
 */
export function roundAreaOf(diameter: any[][]): any[][] {
  const rows = new Rows({ diameter });
  const d = rows.numbers("diameter", { blank: "nothing yet", refuse: aboveZero });
  const areas = rows.values(roundArea, { d });
  return rows.result((i) => pick(areas, i));
}

/**
 * Area of a rectangular opening from its width and height. in gives in², cm gives cm².
 * @customfunction RECT_AREA
 * @helpurl https://localhost:3443/help/rect-area.html
 * @param {any[][]} width Width of the opening, above 0: one cell or a range.
 * @param {any[][]} height Height of the opening, above 0: one cell or a range.
 * @returns {any[][]} Open area.
 */
export function rectAreaOf(width: any[][], height: any[][]): any[][] {
  const rows = new Rows({ width, height });
  const w = rows.numbers("width", { blank: "nothing yet", refuse: aboveZero });
  const h = rows.numbers("height", { blank: "nothing yet", refuse: aboveZero });
  const areas = rows.values(rectArea, { w, h });
  return rows.result((i) => pick(areas, i));
}

/**
 * Total area of the openings in use, such as A+C, looked up among the openings of a box.
 * @customfunction OPEN_AREA
 * @helpurl https://localhost:3443/help/open-area.html
 * @param {any[][]} openings Labels of the openings in use, joined by +: one cell or a range.
 * @param {any[][]} labels Labels of all openings, a column of the Boxes sheet.
 * @param {any[][]} areas Their open areas, a column of the same length.
 * @param {any[][]} [box] The box in use, for lists that hold several boxes.
 * @param {any[][]} [boxes] The box of each opening, a column of the same length.
 * @returns {any[][]} Open area, in the unit of the areas.
 */
export function openAreaOf(
  openings: any[][],
  labels: any[][],
  areas: any[][],
  box: any[][],
  boxes: any[][],
): any[][] {
  const known = boxOpenings(labels, areas, boxes);
  const rows = new Rows({ openings, box });
  const use = rows.texts("openings");
  const boxOf = rows.texts("box");
  return rows.result((i) => {
    const named = use(i);
    const own = boxOf(i);
    if (rows.isSpoiled(i)) return missing("the openings or the box hold an error");
    if (named === "") return "";
    try {
      const open = openingsNamed(named, known.of(own));
      const flawed = open.find(({ area }) => Number.isNaN(area));
      if (flawed)
        return invalid(
          `opening ${flawed.label} has no area above 0 in the list: type it there as a number`,
        );
      return areaOf(open);
    } catch (error) {
      return fromError(error);
    }
  });
}

/**
 * Open area that puts the box at a wanted pressure for a flow.
 * @customfunction AREA_FOR
 * @helpurl https://localhost:3443/help/area-for.html
 * @param {any[][]} flow Flow to be measured, above 0, cfm (L/s for "si"): one cell or a range.
 * @param {any[][]} [pressure] Wanted pressure, Pa; 4 where left out.
 * @param {any[][]} [constant] Flow constant; 1.07 where left out (its twin for "si").
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} Open area, in² (cm² for "si").
 */
export function areaFor(flow: any[][], pressure: any[][], constant: any[][], units: any): any[][] {
  const { rows, areas } = sized(flow, pressure, constant, units);
  return rows.result((i) => pick(areas, i));
}

/**
 * Diameter of the round hole that puts the box at a wanted pressure for a flow.
 * @customfunction DIAMETER_FOR
 * @helpurl https://localhost:3443/help/diameter-for.html
 * @param {any[][]} flow Flow to be measured, above 0, cfm (L/s for "si"): one cell or a range.
 * @param {any[][]} [pressure] Wanted pressure, Pa; 4 where left out.
 * @param {any[][]} [constant] Flow constant; 1.07 where left out (its twin for "si").
 * @param {any} [units] "ip" or "si"; "ip" where left out.
 * @returns {any[][]} Diameter, in (cm for "si").
 */
export function diameterFor(
  flow: any[][],
  pressure: any[][],
  constant: any[][],
  units: any,
): any[][] {
  const { rows, areas } = sized(flow, pressure, constant, units);
  const diameters = rows.values(diameterForArea, { A: areas });
  return rows.result((i) => pick(diameters, i));
}

function sized(flow: Matrix, pressure: Matrix, constant: Matrix, units: unknown) {
  const usual = usualConstant[readUnits(units)];
  const rows = new Rows({ flow, pressure, constant });
  const Q = rows.numbers("flow", { blank: "nothing yet", refuse: aboveZero });
  const P = rows.numbers("pressure", { otherwise: aimedPressure, refuse: aboveZero });
  const K = rows.numbers("constant", { otherwise: usual, refuse: aboveZero });
  return { rows, areas: rows.values(areaForFlow, { Q, P, K }) };
}
