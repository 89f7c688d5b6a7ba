import { acceptanceLimit, margin, meetsCode } from "../../../formulas";
import type { Topic } from "../topic";

export const judging: readonly Topic[] = [
  {
    id: "VERDICT",
    computes: [
      "A flow equal to the rate meets it; one below it is short, however little.",
      'With a spread the flow has to be sure enough. It meets the rate where the chance that it truly does reaches the one asked for, is short where the chance that it does not reaches it, and is "too close to call" between the two: the guarded acceptance of JCGM 106. Without a spread, or where it is blank, a flow is taken as it reads.',
      'Without a flow the answer is "not measured". With a range status other than "in range" it is "retest": the reading cannot carry a verdict.',
    ],
    result: '"meets", "short", "too close to call", "retest" or "not measured".',
    formulas: [meetsCode, margin, acceptanceLimit],
    troubles: [
      { when: "There is a flow but no required rate.", args: [49.6, ""] },
      { when: "The range status is none of the known ones.", args: [49.6, 50, "good"] },
      { when: "The chance was given in percent.", args: [51.36, 50, "in range", 1.47, 95] },
    ],
    related: ["RANGE_STATUS", "ROOM_RATE", "FLOW_SPREAD", "CHANCE_MET"],
  },
];
