import type { SheetLayout } from "./field";

/** A row an opening of a box. */
export const boxesLayout: SheetLayout = {
  kind: "boxes",
  title: "Boxes",
  words: ["boxes", "box", "flow boxes", "flow box", "openings", "devices"],
  fields: [
    {
      key: "box",
      title: "Box",
      words: ["flow box", "box id", "device"],
      holds: "text",
      needed: true,
    },
    {
      key: "opening",
      title: "Opening",
      words: ["label", "opening label", "hole", "hole label", "opening id"],
      holds: "text",
      needed: true,
    },
    { key: "shape", title: "Shape", words: ["form"], holds: "text" },
    {
      key: "size1",
      title: "Diameter or width",
      words: ["size 1", "diameter", "width", "dia", "size"],
      holds: "number",
      measure: "length",
    },
    {
      key: "size2",
      title: "Height",
      words: ["size 2", "length"],
      holds: "number",
      measure: "length",
    },
    {
      key: "count",
      title: "Count",
      words: ["number", "how many", "qty", "quantity"],
      holds: "number",
    },
    {
      key: "area",
      title: "Area",
      words: ["open area", "opening area", "hole area"],
      holds: "number",
      measure: "opening",
      computed: true,
    },
    {
      key: "constant",
      title: "Constant",
      words: ["flow constant", "coefficient", "factor", "k"],
      holds: "number",
    },
    { key: "how", title: "How known", words: ["source", "basis", "measured with"], holds: "text" },
    {
      key: "checked",
      title: "Checked on",
      words: ["checked", "check date", "last check", "verified on", "date checked", "last checked"],
      holds: "date",
    },
    {
      key: "lowest",
      title: "Lowest flow",
      words: ["min flow", "reach from"],
      holds: "number",
      measure: "flow",
      computed: true,
    },
    {
      key: "highest",
      title: "Highest flow",
      words: ["max flow", "reach to"],
      holds: "number",
      measure: "flow",
      computed: true,
    },
  ],
};
