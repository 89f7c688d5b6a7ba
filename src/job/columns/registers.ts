import { panStatuses } from "../../rules";
import { rule, setting, unlessNone } from "./expression";
import {
  date,
  dwellingField,
  noteField,
  number,
  type SheetLayout,
  testerField,
  text,
} from "./field";
import { meanReading, readings } from "./reused";

const reading = (n: number) =>
  number(`reading${n}`, `Pan reading ${n}`, `pan ${n}, pan pressure ${n}`, {
    measure: "pressure",
    ...(n === 1 ? { needed: true } : {}),
  });

/** A row a register, read with the closed box as a pressure pan while the house stands at 50 Pa. */
export const registersLayout: SheetLayout = {
  kind: "registers",
  title: "Registers",
  words: ["registers", "pressure pan", "pan readings", "pan test"],
  names: ["dwelling", "register"],
  features: ["registers"],
  fields: [
    dwellingField,
    text("register", "Register", "register id, grille, register no", { needed: true }),
    text("room", "Room", "location, room name"),
    number("house", "House pressure", "house at, house depressurised to", {
      measure: "pressure",
    }),
    reading(1),
    reading(2),
    reading(3),
    number("pressure", "Pan pressure", "mean pan pressure", {
      measure: "pressure",
      is: meanReading,
    }),
    text("status", "Pan status", "result", {
      says: panStatuses,
      is: unlessNone(
        readings,
        rule("PAN_STATUS", readings, setting("panLimit"), setting("panSpan")),
      ),
    }),
    testerField,
    date("date", "Date", "test date, tested on"),
    noteField,
  ],
};
