import { pressureFromFlow, rateWithMargin } from "../../../formulas";
import type { Topic } from "../topic";

const labels = ["A", "B", "C"];
const areas = [4, 12, 24];

export const estimates: readonly Topic[] = [
  {
    id: "FAN_SIZE",
    computes: [
      "For choosing fans before they are bought. The margin is yours: for the duct, the terminal and the years. A rating equal to the rate with its margin will do.",
      "The list may stand in any order; blank cells of it are passed over.",
    ],
    result: 'The rated flow to buy; "none in the list, largest …" where no fan will do.',
    formulas: [rateWithMargin],
    troubles: [
      { when: "A rating was typed with its unit.", args: [50, 10, [50, "80 cfm"]] },
      { when: "The margin is below 0.", args: [50, -10, [50, 80]] },
      { when: "The required rate is 0.", args: [0, 10, [50, 80]] },
    ],
    related: ["ROOM_RATE", "EXPECTED_OPENING"],
  },
  {
    id: "EXPECTED_OPENING",
    computes: [
      "For packing the box before a visit: which of its openings, or set of them, will stand nearest to 4 Pa at the flow that the plan or the rating promises.",
      "A fan seldom moves what it is rated for. Read first, and change the opening by NEXT_OPENING.",
    ],
    result: 'A label such as A or A+C; "none in range, nearest …" when no set will do.',
    formulas: [pressureFromFlow],
    troubles: [
      { when: "The flow is 0 or below.", args: [0, labels, areas] },
      { when: "The columns are not of one length.", args: [50, labels, [4, 12]] },
      {
        when: "The box is not in the list.",
        args: [50, labels, areas, "south", ["north", "north", "north"]],
      },
    ],
    related: ["NEXT_OPENING", "AREA_FOR", "REACH"],
  },
];
