import { fanExtras } from "./fan-extras";
import type { SheetLayout } from "./field";
import { dwellingField, noteField } from "./shared-fields";

/** A row a fan. */
export const fansLayout: SheetLayout = {
  kind: "fans",
  title: "Fans",
  words: ["fans", "fan tests", "fan readings", "exhaust fans", "readings", "flow tests", "tests"],
  names: ["dwelling", "tag"],
  fields: [
    dwellingField,
    {
      key: "tag",
      title: "Fan",
      words: ["fan tag", "tag", "fan id", "fan no", "fan number", "fan #", "ef", "fan label"],
      holds: "text",
    },
    { key: "room", title: "Room", words: ["location", "room name", "space"], holds: "text" },
    {
      key: "roomKind",
      title: "Room kind",
      words: ["room type", "rm type", "kind of room", "type of room", "space type"],
      holds: "text",
    },
    {
      key: "duty",
      title: "Duty",
      words: ["mode", "operation", "running", "control", "fan duty", "run mode"],
      holds: "text",
    },
    {
      key: "volume",
      title: "Room volume",
      words: ["volume", "kitchen volume"],
      holds: "number",
      measure: "volume",
    },
    {
      key: "rated",
      title: "Rated flow",
      words: ["rated", "rating", "nameplate", "nameplate flow", "rated fan flow", "label flow"],
      holds: "number",
      measure: "flow",
    },
    {
      key: "box",
      title: "Box",
      words: ["flow box", "box id", "box used", "device"],
      holds: "text",
    },
    {
      key: "openings",
      title: "Openings in use",
      words: [
        "openings",
        "opening",
        "openings open",
        "opening used",
        "hole",
        "holes",
        "holes open",
      ],
      holds: "text",
    },
    {
      key: "area",
      title: "Open area",
      words: ["area", "opening area", "hole area", "total area"],
      holds: "number",
      measure: "opening",
      computed: true,
    },
    reading(1, ["first reading"]),
    reading(2, ["second reading"]),
    reading(3, ["third reading"]),
    {
      key: "pressure",
      title: "Box pressure",
      words: [
        "pressure",
        "mean pressure",
        "pressure drop",
        "dp",
        "delta p",
        "box dp",
        "avg pressure",
      ],
      holds: "number",
      measure: "pressure",
      computed: true,
    },
    {
      key: "constant",
      title: "Constant",
      words: ["flow constant", "coefficient", "factor", "k"],
      holds: "number",
      computed: true,
    },
    {
      key: "flow",
      title: "Flow",
      words: ["measured flow", "measured", "actual flow", "tested flow", "air flow", "airflow"],
      holds: "number",
      measure: "flow",
      computed: true,
    },
    {
      key: "status",
      title: "Range status",
      words: ["range", "pressure range", "in range"],
      holds: "text",
      computed: true,
    },
    {
      key: "required",
      title: "Required",
      words: ["required flow", "minimum", "min flow", "min", "code minimum", "target"],
      holds: "number",
      measure: "flow",
      computed: true,
    },
    {
      key: "verdict",
      title: "Verdict",
      words: ["result", "pass", "pass fail", "outcome", "ok"],
      holds: "text",
      computed: true,
    },
    {
      key: "next",
      title: "Next opening",
      words: ["opening to use next", "try next"],
      holds: "text",
      computed: true,
    },
    {
      key: "tester",
      title: "Tester",
      words: ["tech", "technician", "tested by", "by"],
      holds: "text",
    },
    { key: "date", title: "Date", words: ["test date", "tested on", "date tested"], holds: "date" },
    noteField,
    ...fanExtras,
  ],
};

function reading(number: number, words: readonly string[]) {
  return {
    key: `reading${number}`,
    title: `Reading ${number}`,
    words: [`pressure ${number}`, `p${number}`, `dp ${number}`, `dp${number}`, ...words],
    holds: "number",
    measure: "pressure",
  } as const;
}
