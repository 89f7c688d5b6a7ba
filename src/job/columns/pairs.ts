import { less, orNothing, over, rule, times, unlessBlank, value } from "./expression";
import { date, noteField, number, type SheetLayout, testerField, text } from "./field";
import { constantOfBox, ofOpenings, units } from "./reused";

/** A row a paired reading of a box and a reference instrument on the same fan. */
export const pairsLayout: SheetLayout = {
  kind: "pairs",
  title: "Pairs",
  words: ["pairs", "paired readings", "proof readings", "box proof", "comparison"],
  names: ["box", "openings"],
  features: ["proof"],
  fields: [
    text("box", "Box", "flow box, box id", { needed: true }),
    text("openings", "Openings in use", "openings, opening, holes open"),
    number("area", "Open area", "area, opening area", {
      measure: "opening",
      is: ofOpenings("openings", "area"),
    }),
    number("pressure", "Box pressure", "pressure, dp, delta p", {
      measure: "pressure",
      needed: true,
    }),
    number("constant", "Constant", "flow constant, k", { format: "0.00", is: constantOfBox }),
    number("boxFlow", "Box flow", "flow by box, box reading", {
      measure: "flow",
      is: rule("FLOW", "area", orNothing("pressure"), "constant", units),
    }),
    text("instrument", "Reference", "reference instrument, reference meter"),
    number("reference", "Reference flow", "reference reading, true flow, flow by reference", {
      measure: "flow",
      needed: true,
    }),
    number("difference", "Difference", "error, difference percent", {
      format: "0.0",
      is: unlessBlank(
        ["boxFlow", "reference"],
        over(times(value(100), less("boxFlow", "reference")), "reference"),
      ),
    }),
    testerField,
    date("date", "Date", "test date, tested on"),
    noteField,
  ],
};
