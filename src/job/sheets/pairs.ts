import type { SheetLayout } from "./field";

/** A row a paired reading of a box and a reference instrument on the same fan. */
export const pairsLayout: SheetLayout = {
  kind: "pairs",
  title: "Pairs",
  words: ["pairs", "paired readings", "proof readings", "box proof", "comparison"],
  names: ["box", "openings"],
  fields: [
    { key: "box", title: "Box", words: ["flow box", "box id"], holds: "text", needed: true },
    {
      key: "openings",
      title: "Openings in use",
      words: ["openings", "opening", "holes open"],
      holds: "text",
    },
    {
      key: "area",
      title: "Open area",
      words: ["area", "opening area"],
      holds: "number",
      measure: "opening",
      computed: true,
    },
    {
      key: "pressure",
      title: "Box pressure",
      words: ["pressure", "dp", "delta p"],
      holds: "number",
      measure: "pressure",
      needed: true,
    },
    {
      key: "constant",
      title: "Constant",
      words: ["flow constant", "k"],
      holds: "number",
      computed: true,
    },
    {
      key: "boxFlow",
      title: "Box flow",
      words: ["flow by box", "box reading"],
      holds: "number",
      measure: "flow",
      computed: true,
    },
    {
      key: "instrument",
      title: "Reference",
      words: ["reference instrument", "reference meter"],
      holds: "text",
    },
    {
      key: "reference",
      title: "Reference flow",
      words: ["reference reading", "true flow", "flow by reference"],
      holds: "number",
      measure: "flow",
      needed: true,
    },
    {
      key: "difference",
      title: "Difference",
      words: ["error", "difference percent"],
      holds: "number",
      computed: true,
    },
    { key: "tester", title: "Tester", words: ["tech", "tested by", "by"], holds: "text" },
    { key: "date", title: "Date", words: ["test date", "tested on"], holds: "date" },
    { key: "note", title: "Note", words: ["notes", "comment", "remarks"], holds: "text" },
  ],
};
