import type { Topic } from "../topic";

export const readingAlong: readonly Topic[] = [
  {
    id: "SOURCE",
    computes: [
      "The work and clause of the number that ROOM_RATE gives for the same edition, room and duty. With the edition alone: of its usual rule for the whole dwelling.",
      'The words in brackets say how far the number has been traced. Verify a number "from memory" against your own copy before it counts.',
    ],
    result: "Text: work, clause (mark).",
    formulas: [],
    source: { work: "the edition's own data", clause: "", mark: "by definition" },
    troubles: [
      { when: "The edition is not known.", args: ["62.2-1999"] },
      { when: "The edition sets no such rate.", args: ["62.2-2016", "utility", "on demand"] },
      { when: "The duty is blank.", args: ["62.2-2016", "bathroom", ""] },
    ],
    related: ["EDITIONS", "ROOM_RATE", "DWELLING_RATE"],
  },
  {
    id: "EDITIONS",
    computes: [
      'A table that spills: a row of headings, then a row for each number, with its unit, its clause and its mark. Beside a number "from memory" the note asks to verify it against your copy.',
      'All editions and codes together make a table of more than a thousand rows; name one for a short list, or "every edition" for the constants and limits that hold whatever the edition.',
      "Inside an Excel table nothing spills: put the formula outside it.",
    ],
    result:
      'Eight cells a row: edition, what, value ("no end" for the open end of a table), unit, work, clause, mark, note.',
    formulas: [],
    source: { work: "the data of the editions and rules", clause: "", mark: "by definition" },
    troubles: [{ when: "The edition is not known.", args: ["62.2-1999"] }],
    related: ["SOURCE", "ROOM_RATE"],
  },
];
