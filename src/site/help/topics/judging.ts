import { margin, meetsCode } from "../../../formulas";
import type { Topic } from "../topic";

export const judging: readonly Topic[] = [
  {
    id: "VERDICT",
    computes: [
      "A flow equal to the rate meets it; one below it is short, however little.",
      'Without a flow the answer is "not measured". With a range status other than "in range" it is "retest": the reading cannot carry a verdict.',
    ],
    result: '"meets", "short", "retest" or "not measured".',
    formulas: [meetsCode, margin],
    troubles: [
      { when: "There is a flow but no required rate.", args: [49.6, ""] },
      { when: "The range status is none of the known ones.", args: [49.6, 50, "good"] },
    ],
    related: ["RANGE_STATUS", "ROOM_RATE"],
  },
];
