import { date, noteField, number, type SheetLayout, text } from "./field";

/**
 * A row an instrument, or a row a range setting of one. A reading becomes a flow by
 * constant × reading ^ exponent; a manometer and a reference have neither.
 */
export const instrumentsLayout: SheetLayout = {
  kind: "instruments",
  title: "Instruments",
  words: ["instruments", "meters", "equipment list"],
  names: ["instrument"],
  features: ["proof", "instruments"],
  fields: [
    text("instrument", "Instrument", "meter, instrument id", { needed: true }),
    text("kind", "Kind", "instrument kind", { needed: true }),
    text("setting", "Setting", "range setting, ring"),
    number("constant", "Constant", "coefficient, k", { format: "0.00" }),
    number("exponent", "Exponent", "n, power"),
    number("lowest", "Lowest reading", "min reading, from"),
    number("highest", "Highest reading", "max reading, to"),
    number("percent", "Limit in percent", "accuracy percent, limit percent"),
    number("floor", "Limit, least", "accuracy floor, least limit"),
    number("resolution", "Resolution", "smallest step"),
    date("checked", "Calibrated on", "calibrated, calibration date, checked on"),
    text("certificate", "Certificate", "certificate number, report"),
    noteField,
  ],
};
