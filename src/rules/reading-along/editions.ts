import type { OtherArgument } from "../contract/argument";
import { CellFault, plainCell, toMatrix } from "../contract/cell";
import type { Help } from "../contract/help";
import { rule as ruleOf } from "../contract/rule";
import { verifyNote } from "../contract/source-text";
import { everyNumber, type NumberEntry, numbersOf } from "./numbers";

const headings = [
  "edition",
  "what",
  "value",
  "unit",
  "work",
  "clause",
  "mark",
  "read in",
  "on",
  "note",
];
const named: OtherArgument = { kind: "word", isRange: true, optional: true };

const entriesOf = (name: string): NumberEntry[] => (name === "" ? everyNumber() : numbersOf(name));

export const rule = ruleOf({
  id: "EDITIONS",
  title: "Numbers of the editions and rules",
  arguments: { edition: named },
  work({ edition }) {
    const name = String(edition);
    const count = entriesOf(name).length;
    const of = name === "" ? "all editions and rules" : name;
    return {
      gives: [],
      why: () => ({
        words: [`${count} numbers of ${of}, each with its clause and mark`],
        sources: [],
      }),
    };
  },
  table([argument]) {
    const plain = plainCell(toMatrix(argument)[0]?.[0]);
    if (plain instanceof CellFault) throw plain;
    return [headings, ...entriesOf(plain === null || plain === 0 ? "" : String(plain)).map(row)];
  },
});

function row({ edition, what, value, unit, source }: NumberEntry): unknown[] {
  const { work, clause, mark, document = "", traced = "" } = source;
  const shown = Number.isFinite(value) ? value : "no end";
  return [edition, what, shown, unit, work, clause, mark, document, traced, verifyNote(mark)];
}

export const help: Help = {
  computes: [
    'A table that spills: a row of headings, then a row for each number, with its unit, its clause and its mark. Beside a number "from memory" the note asks to verify it against your copy.',
    'All editions and codes together make a table of more than a thousand rows; name one for a short list, or "every edition" for the constants and limits that hold whatever the edition.',
    "Inside an Excel table nothing spills: put the formula outside it.",
  ],
  result:
    'Ten cells a row: edition, what, value ("no end" for the open end of a table), unit, work, clause, mark, the document it was read in, the day, note.',
  source: { work: "the data of the editions and rules", clause: "", mark: "by definition" },
  examples: [
    {
      words: "A code of which one number is known here: a row of headings and a row.",
      args: ["SC-2021"],
      gives: [
        headings,
        [
          "SC-2021",
          "makeup air, above",
          400,
          "cfm",
          "South Carolina Residential Code 2021",
          "M1503.6",
          "read",
          "South Carolina's amendment of the IRC 2021, as adopted, word for word (github.com/thexqin/us-building-codes-dataset, January 2026)",
          "2026-11-27",
          "",
        ],
      ],
    },
  ],
  troubles: [{ when: "The edition is not known.", args: ["62.2-1999"] }],
  related: ["SOURCE", "ROOM_RATE"],
};
