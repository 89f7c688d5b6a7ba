import { agreementLimit, openingStrength, percentError } from "../../../formulas";
import type { Topic } from "../topic";

const passedOver =
  "All pairs make one row of results, so that one bad cell spoils it; its message names the pair. A pair without one of its readings is passed over.";

export const pairs: readonly Topic[] = [
  {
    id: "PAIR_CONSTANT",
    computes: [
      "The constant of a box is the slope, through the origin, of the reference flows against area × √pressure, by least squares. Its spread is that of the pairs alone: what the reference itself may be off by comes on top.",
      passedOver,
    ],
    result:
      "Three cells: the constant, its standard spread (blank for a single pair) and the degrees of freedom.",
    formulas: [openingStrength],
    troubles: [
      { when: "The ranges are not of one length.", args: [[12, 24], [4, 4], [26]] },
      {
        when: "An area is blank beside a reading.",
        args: [
          [12, ""],
          [4, 4],
          [26, 52],
        ],
      },
    ],
    related: ["PAIR_BIAS", "PAIR_LIMITS", "FLOW"],
  },
  {
    id: "PAIR_BIAS",
    computes: [
      "The error of each pair is the box's flow less the reference's, in percent of the reference. Their mean says how far the box is off altogether, their standard deviation how well single readings keep to that.",
      passedOver,
    ],
    result: "Three cells: mean error, %; standard deviation of the errors, %; number of pairs.",
    formulas: [percentError],
    troubles: [
      { when: "The ranges are not of one length.", args: [[25, 52], [26]] },
      { when: "A reference flow is 0.", args: [[25], [0]] },
    ],
    related: ["PAIR_LIMITS", "PAIR_CONSTANT"],
  },
  {
    id: "PAIR_LIMITS",
    computes: [
      "Limits of agreement after Bland and Altman: the mean error, less and plus 1.96 standard deviations of the errors. Some 95 % of the errors to come lie between them, if the errors are about normal and the readings like these.",
      passedOver,
    ],
    result:
      "Three cells: low limit, %; high limit, %; the largest error among the pairs without its sign, %.",
    formulas: [percentError, agreementLimit],
    troubles: [
      { when: "The ranges are not of one length.", args: [[25, 52], [26]] },
      { when: "A flow was typed as text.", args: [["25 cfm"], [26]] },
    ],
    related: ["PAIR_BIAS", "PAIR_CONSTANT"],
  },
];
