import {
  average,
  cells,
  column,
  type Expression,
  found,
  isBlank,
  type Part,
  rule,
  setting,
  unlessBlank,
  unlessNone,
  when,
} from "./expression";

/** Expressions that several sheets use. */

export const units = setting("units");
export const window: readonly Part[] = [setting("low"), setting("high")];

/** The sum over the openings named in a field, of a column of the Boxes sheet. */
export const ofOpenings = (named: string, key: string): Expression =>
  rule(
    "OPEN_AREA",
    named,
    column("boxes", "opening"),
    column("boxes", key),
    "box",
    column("boxes", "box"),
  );

/** The openings of the Boxes sheet, as the functions that choose among them take them. */
export const openingsOfBox: readonly Part[] = [
  column("boxes", "opening"),
  column("boxes", "area"),
  "box",
  column("boxes", "box"),
];

const stated = found("boxes", "constant", "box");

/** The constant of the box named, or the job's where the box states none. */
export const boxConstant = when(isBlank(stated), setting("constant"), stated);
export const constantOfBox = unlessBlank(["box"], boxConstant);

export const readings = cells("reading1", "reading2", "reading3");
export const meanReading = unlessNone(readings, average(readings));
