import type { SheetLayout } from "./field";
import { dwellingField, noteField } from "./shared-fields";

const reading = (number: number) =>
  ({
    key: `reading${number}`,
    title: `Pan reading ${number}`,
    words: [`pan ${number}`, `pan pressure ${number}`],
    holds: "number",
    measure: "pressure",
    ...(number === 1 ? { needed: true } : {}),
  }) as const;

/** A row a register, read with the closed box as a pressure pan while the house stands at 50 Pa. */
export const registersLayout: SheetLayout = {
  kind: "registers",
  title: "Registers",
  words: ["registers", "pressure pan", "pan readings", "pan test"],
  names: ["dwelling", "register"],
  fields: [
    dwellingField,
    {
      key: "register",
      title: "Register",
      words: ["register id", "grille", "register no"],
      holds: "text",
      needed: true,
    },
    { key: "room", title: "Room", words: ["location", "room name"], holds: "text" },
    {
      key: "house",
      title: "House pressure",
      words: ["house at", "house depressurised to"],
      holds: "number",
      measure: "pressure",
    },
    reading(1),
    reading(2),
    reading(3),
    {
      key: "pressure",
      title: "Pan pressure",
      words: ["mean pan pressure"],
      holds: "number",
      measure: "pressure",
      computed: true,
    },
    { key: "status", title: "Pan status", words: ["result"], holds: "text", computed: true },
    { key: "tester", title: "Tester", words: ["tech", "tested by", "by"], holds: "text" },
    { key: "date", title: "Date", words: ["test date", "tested on"], holds: "date" },
    noteField,
  ],
};
