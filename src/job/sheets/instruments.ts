import type { SheetLayout } from "./field";

/**
 * A row an instrument, or a row a range setting of one. A reading becomes a flow by
 * constant × reading ^ exponent; a manometer and a reference have neither.
 */
export const instrumentsLayout: SheetLayout = {
  kind: "instruments",
  title: "Instruments",
  words: ["instruments", "meters", "equipment list"],
  names: ["instrument"],
  fields: [
    {
      key: "instrument",
      title: "Instrument",
      words: ["meter", "instrument id"],
      holds: "text",
      needed: true,
    },
    { key: "kind", title: "Kind", words: ["instrument kind"], holds: "text", needed: true },
    { key: "setting", title: "Setting", words: ["range setting", "ring"], holds: "text" },
    { key: "constant", title: "Constant", words: ["coefficient", "k"], holds: "number" },
    { key: "exponent", title: "Exponent", words: ["n", "power"], holds: "number" },
    { key: "lowest", title: "Lowest reading", words: ["min reading", "from"], holds: "number" },
    { key: "highest", title: "Highest reading", words: ["max reading", "to"], holds: "number" },
    {
      key: "percent",
      title: "Limit in percent",
      words: ["accuracy percent", "limit percent"],
      holds: "number",
    },
    {
      key: "floor",
      title: "Limit, least",
      words: ["accuracy floor", "least limit"],
      holds: "number",
    },
    { key: "resolution", title: "Resolution", words: ["smallest step"], holds: "number" },
    {
      key: "checked",
      title: "Calibrated on",
      words: ["calibrated", "calibration date", "checked on"],
      holds: "date",
    },
    {
      key: "certificate",
      title: "Certificate",
      words: ["certificate number", "report"],
      holds: "text",
    },
    { key: "note", title: "Note", words: ["notes", "comment", "remarks"], holds: "text" },
  ],
};
