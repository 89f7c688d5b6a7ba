import { pressureAtOtherArea, rangeCode } from "../../../formulas";
import type { Topic } from "../topic";

const labels = ["A", "B", "C"];

export const range: readonly Topic[] = [
  {
    id: "RANGE_STATUS",
    computes: [
      "Too little pressure, and the manometer and the wind in the room decide the result; too much, and the box throttles the fan.",
      "Both ends of the window belong to it. A blank pressure gives a blank.",
    ],
    result: '"in range", "above", "below" or "reversed".',
    formulas: [rangeCode],
    troubles: [
      { when: "The pressure was typed as text.", args: ["8.2 Pa"] },
      { when: "An end of the window is 0 or below.", args: [8.2, 0, 8] },
    ],
    related: ["NEXT_OPENING", "REACH", "VERDICT"],
  },
  {
    id: "NEXT_OPENING",
    computes: [
      "The answer is the set of openings whose expected pressure comes nearest to 4 Pa by ratio, with as few openings as will do.",
      "The expectation takes the fan to keep its flow. A weak fan gains a little as the box opens, so read again after the change.",
    ],
    result:
      'A label such as A or A+C; "keep" when the pressure is in the window; "none in range, nearest …" when no set will do.',
    formulas: [pressureAtOtherArea],
    troubles: [
      { when: "The pressure is 0 or below.", args: [0, 12, labels, [4, 12, 24]] },
      { when: "The columns are not of one length.", args: [16, 12, labels, [4, 12]] },
      {
        when: "The box is not in the list.",
        args: [16, 12, labels, [4, 12, 24], "south", ["north", "north", "north"]],
      },
    ],
    related: ["RANGE_STATUS", "OPEN_AREA"],
  },
];
