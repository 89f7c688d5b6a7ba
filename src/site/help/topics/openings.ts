import { areaForFlow, diameterForArea, rectArea, roundArea } from "../../../formulas";
import type { Topic } from "../topic";

const labels = ["A", "B", "C"];
const areas = [4, 12, 24];

export const openings: readonly Topic[] = [
  {
    id: "ROUND_AREA",
    computes: ["Measure the hole as cut, twice and at right angles, and give the mean."],
    result: "Open area: in² from inches, cm² from centimetres.",
    formulas: [roundArea],
    troubles: [
      { when: "The diameter is 0 or below.", args: [0] },
      { when: "The diameter was typed as text, or with its unit.", args: ["4.25 in"] },
    ],
    related: ["RECT_AREA", "OPEN_AREA", "DIAMETER_FOR"],
  },
  {
    id: "RECT_AREA",
    computes: ["Measure each side as cut, at both ends, and give the means."],
    result: "Open area: in² from inches, cm² from centimetres.",
    formulas: [rectArea],
    troubles: [
      { when: "A side was typed with its unit.", args: [3, "8 in"] },
      { when: "A side is 0 or below.", args: [3, -8] },
    ],
    related: ["ROUND_AREA", "OPEN_AREA"],
  },
  {
    id: "OPEN_AREA",
    computes: [
      'Labels may be joined by +, a comma, a semicolon, & or the word "and"; capitals do not matter.',
      "Where the list holds several boxes, give the box in use and the column of boxes too.",
    ],
    result: "Open area, in the unit of the areas given.",
    formulas: [],
    source: { work: "sum of the openings in use", clause: "", mark: "by definition" },
    troubles: [
      { when: "A label is not in the list.", args: ["A+D", labels, areas] },
      { when: "A label is named twice.", args: ["A+A", labels, areas] },
      { when: "The area of an opening is not a number above 0.", args: ["B", labels, [4, "", 24]] },
      { when: "The columns are not of one length.", args: ["A", labels, [4, 12]] },
    ],
    related: ["ROUND_AREA", "RECT_AREA", "FLOW"],
  },
  {
    id: "AREA_FOR",
    computes: ["Use it to size a new box, or to choose an opening before a visit."],
    result: 'Open area, in² (cm² with units "si").',
    formulas: [areaForFlow],
    troubles: [
      { when: "The flow is 0 or below.", args: [0] },
      { when: "The wanted pressure is 0 or below.", args: [50, 0] },
      { when: "The units are neither ip nor si.", args: [50, 4, null, "cfm"] },
    ],
    related: ["DIAMETER_FOR", "REACH", "BOX_PRESSURE"],
  },
  {
    id: "DIAMETER_FOR",
    computes: ["The area of AREA_FOR, as one circle."],
    result: 'Diameter, in (cm with units "si").',
    formulas: [areaForFlow, diameterForArea],
    troubles: [
      { when: "The flow is 0 or below.", args: [-50] },
      { when: "The units are neither ip nor si.", args: [50, 4, null, "metric"] },
    ],
    related: ["AREA_FOR", "ROUND_AREA"],
  },
];
