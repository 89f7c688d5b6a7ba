import {
  acceptanceLimit,
  constantSpread,
  fanLineSlope,
  fanLineTop,
  flowFromPressure,
  fullWidthSpread,
  halfWidthSpread,
  manometerLimit,
  meanSpread,
  rectAreaLimit,
  roundAreaLimit,
  unboxedEstimate,
  unboxedFlow,
} from "../../../formulas";
import type { Topic } from "../topic";

export const spread: readonly Topic[] = [
  {
    id: "AREA_LIMIT",
    computes: [
      "Half the difference between the largest and the smallest area that sizes within the tolerance allow.",
      "A blank second size means a round opening.",
    ],
    result: "Half width of the area's limits, in² (cm² where the sizes are in cm).",
    formulas: [roundAreaLimit, rectAreaLimit],
    troubles: [
      { when: "The tolerance is below 0.", args: [-0.1, 5.5] },
      { when: "The tolerance is blank beside a size.", args: ["", 5.5] },
    ],
    related: ["FLOW_SPREAD", "ROUND_AREA", "RECT_AREA"],
  },
  {
    id: "FLOW_SPREAD",
    computes: [
      "All that may put a flow off is drawn together after the guide JCGM 100 (GUM): each part times the slope of the flow formula by it, squared and added up. The parts are the manometer's limit, its display, its zero, the scatter of repeated readings, the area and the constant.",
      "Limits count as rectangular: every value within is as likely. Two or more readings of a fan, side by side in its row, tell their own scatter; one alone tells none.",
      "Student's t for the effective degrees of freedom, cut down to a whole number, turns the standard spread into the ± at 95 %.",
    ],
    result:
      'Three cells for each row: standard spread and, in the third, the ± that covers 95 %, both cfm (L/s for "si"); between them the effective degrees of freedom, "infinite" where nothing was repeated.',
    formulas: [
      flowFromPressure,
      manometerLimit,
      halfWidthSpread,
      fullWidthSpread,
      meanSpread,
      constantSpread,
    ],
    troubles: [
      {
        when: "A reading is 0: the flow has no slope there.",
        args: [0, 24, 0.2, 1.07, 2, 1, 0.25],
      },
      { when: "The area's limit is blank.", args: [4, 24, "", 1.07, 2, 1, 0.25] },
      { when: "A limit is below 0.", args: [4, 24, 0.2, 1.07, 2, -1, 0.25] },
    ],
    related: ["FLOW", "AREA_LIMIT", "CHANCE_MET", "VERDICT"],
  },
  {
    id: "CHANCE_MET",
    computes: [
      "How likely it is that the flow, as it truly is, reaches the required rate: the part of a normal curve about the measured flow that lies above the rate (JCGM 106:2012). A flow equal to the rate gives 0.5, however good the manometer.",
    ],
    result: "A chance, 0 to 1.",
    formulas: [],
    source: { work: "JCGM 106:2012", clause: "7.3.1", mark: "from memory" },
    troubles: [
      { when: "The spread is blank.", args: [51.36, "", 50] },
      { when: "The spread is below 0.", args: [51.36, -1, 50] },
    ],
    related: ["ACCEPT_FROM", "FLOW_SPREAD", "VERDICT"],
  },
  {
    id: "ACCEPT_FROM",
    computes: [
      "A flow measured at this limit or above is truly at the rate or above with the chance asked for. At a chance of 0.5 the limit is the rate itself.",
    ],
    result: "Acceptance limit, in the unit of the rate.",
    formulas: [acceptanceLimit],
    troubles: [
      { when: "The chance is 1: no reading is that sure.", args: [50, 1.47, 1] },
      { when: "The chance was given in percent.", args: [50, 1.47, 95] },
    ],
    related: ["CHANCE_MET", "VERDICT"],
  },
  {
    id: "UNBOXED_FLOW",
    computes: [
      "A box holds a fan back a little. Read with two openings, the flow falls on a straight line against the box pressure; carried on to 0 Pa it tells what the fan moves without the box.",
      "It is our own method and no standard names it: keep the reading itself as the measured flow.",
    ],
    result: 'Flow at no box pressure, cfm (L/s for "si").',
    formulas: [unboxedFlow],
    troubles: [
      { when: "Both areas are alike: there is no line.", args: [24, 4, 24, 4] },
      { when: "The pressures are less than 2 : 1 apart.", args: [32, 4, 24, 7] },
      { when: "The flow rises with the pressure.", args: [12, 4, 24, 8] },
      { when: "The flow falls faster than any fan's.", args: [24, 4, 12, 8] },
      { when: "A pressure is negative.", args: [24, -4, 12, 15] },
    ],
    related: ["UNBOXED_SPREAD", "UNBOXED_ESTIMATE", "FLOW"],
  },
  {
    id: "UNBOXED_SPREAD",
    computes: [
      "The spread of UNBOXED_FLOW after JCGM 100 (GUM). Both readings are of one zeroing and one box, so zero and constant are off in the same direction both times; the limit of the manometer, its display and the areas are each off for themselves.",
      "The nearer the two pressures, the larger it grows.",
    ],
    result: 'Standard spread, cfm (L/s for "si").',
    formulas: [unboxedFlow, manometerLimit, halfWidthSpread, fullWidthSpread, constantSpread],
    troubles: [
      {
        when: "Both areas are alike.",
        args: [24, 4, 24, 4, 1.07, 1, 0.25, 0.2, 0.2, 2],
      },
      { when: "A limit is blank.", args: [32, 4, 16, 14, 1.07, 1, 0.25, "", 0.2, 2] },
    ],
    related: ["UNBOXED_FLOW", "FLOW_SPREAD"],
  },
  {
    id: "UNBOXED_ESTIMATE",
    computes: [
      "An estimate where only one reading was taken. Two points of the fan's rating make a straight line; the reading tells how much of the fan's pressure the duct takes; without the box the fan moves along its line until the duct takes all of it.",
      "A fan that is dirty, old or badly fed does not run on its rated line. Never judge a fan by this number.",
    ],
    result: "Estimated flow at no box pressure, in the unit of the flow.",
    formulas: [fanLineSlope, fanLineTop, unboxedEstimate],
    troubles: [
      {
        when: "The rated flow rises with the pressure: the points are mixed up.",
        args: [48, 4, 40, 24.9, 60, 62.3],
      },
      { when: "The fan moves more than its rating allows.", args: [95, 4, 80, 24.9, 60, 62.3] },
    ],
    related: ["UNBOXED_FLOW", "FLOW"],
  },
];
