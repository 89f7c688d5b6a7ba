import {
  isBlank,
  placeOf,
  rule,
  same,
  setting,
  times,
  unlessBlank,
  value,
  when,
} from "./expression";
import { date, number, type SheetLayout, text } from "./field";
import { units, window } from "./reused";

const count = when(isBlank("count"), value(1), "count");
const tolerance = when(isBlank("tolerance"), setting("tolerance"), "tolerance");
const reach = (place: number) =>
  // One value a cell: a formula that spills shows no stored value in some other programs.
  placeOf(
    place,
    "REACH",
    "area",
    when(isBlank("constant"), setting("constant"), "constant"),
    ...window,
    units,
  );

/** A row an opening of a box. */
export const boxesLayout: SheetLayout = {
  kind: "boxes",
  title: "Boxes",
  words: ["boxes", "box", "flow boxes", "flow box", "openings", "devices"],
  names: ["box", "opening"],
  fields: [
    text("box", "Box", "flow box, box id, device", { needed: true }),
    text("opening", "Opening", "label, opening label, hole, hole label, opening id", {
      needed: true,
    }),
    text("shape", "Shape", "form", {
      choices: ["round", "rectangular"],
      reads: (text) => (/^(round|circ|hole|dia)/i.test(text) ? "round" : text),
    }),
    number("size1", "Diameter or width", "size 1, diameter, width, dia, size", {
      measure: "length",
    }),
    number("size2", "Height", "size 2, length", { measure: "length" }),
    number("wall", "Wall thickness", "thickness, wall", {
      measure: "length",
      feature: "proof",
    }),
    number("count", "Count", "number, how many, qty, quantity"),
    number("tolerance", "Size tolerance", "tolerance, cutting tolerance", {
      measure: "length",
      feature: "spread",
    }),
    number("area", "Area", "open area, opening area, hole area", {
      measure: "opening",
      is: unlessBlank(
        ["size1"],
        times(
          count,
          when(
            same("shape", value("round")),
            rule("ROUND_AREA", "size1"),
            rule("RECT_AREA", "size1", "size2"),
          ),
        ),
      ),
    }),
    number("areaLimit", "Area limit", "area tolerance, area plus minus", {
      measure: "opening",
      feature: "spread",
      is: unlessBlank(
        ["size1", tolerance],
        times(count, rule("AREA_LIMIT", tolerance, "size1", "size2")),
      ),
    }),
    number("constant", "Constant", "flow constant, coefficient, factor, k", {
      format: "0.00",
    }),
    text("how", "How known", "source, basis, measured with"),
    date(
      "checked",
      "Checked on",
      "checked, check date, last check, verified on, date checked, last checked",
    ),
    number("lowest", "Lowest flow", "min flow, reach from", { measure: "flow", is: reach(1) }),
    number("highest", "Highest flow", "max flow, reach to", { measure: "flow", is: reach(2) }),
    number("face", "Face area", "face, box face, area of the face", {
      measure: "opening",
      feature: ["proof", "conditions"],
    }),
  ],
};
