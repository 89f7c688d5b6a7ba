import { ductLeft, fanEfficacy, matchTolerance } from "../../../formulas";
import type { Topic } from "../topic";

const verify = "Verify against your own copy of the code that applies.";

export const equipment: readonly Topic[] = [
  {
    id: "MIN_EFFICACY",
    computes: [
      "Codes ask for a least flow for each watt, by kind of fan and partly by rated flow. A fan of 50 cfm on 25 W has 2.0 cfm/W: enough for IECC-2018, too little for IECC-2021.",
      `Other exhaust fans count as bath or utility. ${verify}`,
    ],
    result: "Least efficacy, cfm/W.",
    formulas: [fanEfficacy],
    source: { work: "10 CFR 460", clause: "460.204, table 1", mark: "two sources" },
    troubles: [
      { when: "The code tells fans apart by flow.", args: ["IECC-2021", "bath"] },
      { when: "The code has no such kind of fan.", args: ["10-CFR-460", "range hood"] },
      { when: "The edition sets no efficacy.", args: ["62.2-2016", "in-line"] },
      {
        when: "The code states no number in these units.",
        args: ["IECC-2021", "in-line", "", "si"],
      },
    ],
    related: ["MAX_SONE", "ROOM_RATE"],
  },
  {
    id: "MAX_SONE",
    computes: [
      "1 sone for fans that run all the time, 3 for fans on demand, as rated at 0.1 in w.c. or more.",
      `Fans of 400 cfm and more, and fans mounted outside the rooms with at least 4 ft of duct, are exempt. ${verify}`,
    ],
    result: 'Sones, or "no limit".',
    formulas: [],
    source: {
      work: "ASHRAE 62.2-2010, 2013, 2016",
      clause: "7.2, sound ratings, as told by Building America guides",
      mark: "read",
    },
    troubles: [
      { when: "The edition sets no sound limit.", args: ["IRC-2021", "continuous"] },
      { when: "The duty is not known.", args: ["62.2-2016", "often"] },
      {
        when: "The edition's exemption is in cfm only.",
        args: ["ENERGY-STAR-3.1", "continuous", 190, "no", "si"],
      },
    ],
    related: ["MIN_EFFICACY", "ROOM_RATE"],
  },
  {
    id: "DUCT_LIMIT",
    computes: [
      "The table gives feet of straight duct by diameter and by the fan's flow as rated at 0.25 in w.c. A flow between two columns counts as the higher, a diameter between two rows as the smaller. Each elbow takes 15 ft off.",
      "Once the installed flow has been measured, the table does not apply: the measured flow counts instead.",
      `The rows of 3 to 6 in were read; those of 7 in and more are from memory. ${verify}`,
    ],
    result: 'Feet, "no limit" or "not allowed".',
    formulas: [ductLeft],
    source: { work: "IRC 2021", clause: "table M1504.2", mark: "read" },
    troubles: [
      { when: "The table ends before this flow.", args: ["IRC-2021", "flex", 8, 350] },
      { when: "The duct kind is not known.", args: ["IRC-2021", "round", 4, 50] },
      { when: "The edition has no such table here.", args: ["62.2-2016", "flex", 4, 50] },
    ],
    related: ["ROOM_RATE", "FLOW"],
  },
  {
    id: "MAKEUP_AIR",
    computes: [
      "Exhaust above 400 cfm (190 L/s) needs makeup air. IRC-2015 asks for it in every dwelling; 2018 and 2021 only where a fuel appliance inside is neither direct-vent nor mechanical-draft.",
      `States may ask for more, at lower flows. ${verify}`,
    ],
    result: '"needed" or "not needed".',
    formulas: [],
    source: { work: "IRC 2018 and 2021", clause: "M1503.6 (2015: M1503.4)", mark: "read" },
    troubles: [
      { when: "It depends on an appliance.", args: ["IRC-2021", 600] },
      { when: "The edition has no such rule here.", args: ["62.2-2016", 600] },
    ],
    related: ["ROOM_RATE"],
  },
  {
    id: "DESIGN_MATCH",
    computes: [
      "A programme may ask that a measured flow match its design, both ways: here within 15 cfm or 15 %, whichever is more. A code's least rate is another matter, see VERDICT.",
      "From memory: verify against your own copy of the programme's checklist.",
    ],
    result: '"matches", "low" or "high".',
    formulas: [matchTolerance],
    source: {
      work: "ENERGY STAR homes 3.1",
      clause: "rater field checklist, item 7.1",
      mark: "from memory",
    },
    troubles: [
      { when: "The programme is not known.", args: ["house rule", 80, 90] },
      { when: "The design flow is missing.", args: ["ENERGY-STAR-3.1", "", 90] },
    ],
    related: ["VERDICT", "DWELLING_RATE"],
  },
];
