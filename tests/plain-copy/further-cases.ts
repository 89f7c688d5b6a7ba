import {
  codes,
  ductKinds,
  duties,
  type Edition,
  editions,
  fanKinds,
  roomKinds,
} from "../../src/editions";
import {
  type Argument,
  beside,
  type Case,
  casesOf,
  combined,
  error,
  list,
  type Subject,
} from "./case";

const everyCode = [...editions, ...codes];
const ids = everyCode.map(({ id }) => id);
/** Every way of writing the name of an edition or code. */
export const spellings: readonly string[] = [
  ...everyCode.flatMap(({ id, title, aliases }) => [id, title, ...aliases]),
  "ashrae 62.2-2016",
  "ANSI/ASHRAE Standard 62.2 2019",
  " irc_2021 ",
];
const named: readonly Argument[] = [...ids, "62.2", 62.2];
const units: readonly Argument[] = ["ip", "si", " SI ", "metric"];
const answers: readonly Argument[] = ["yes", "N", " True ", "maybe", 1, true, false];

/** The editions that set such a rule, and one that does not. */
function setting(rule: (edition: Edition) => unknown): string[] {
  const has = editions.filter(rule);
  const none = editions.filter((edition) => !rule(edition)).slice(0, 1);
  return [...has, ...none].map(({ id }) => id);
}

const subjects: readonly Subject[] = [
  {
    id: "ROOM_RATE",
    base: ["CA-2022", "kitchen hood", "on demand", 960, "ip", "no", "fuel", "no", 900, 50],
    tried: [
      named,
      [...roomKinds, "attic"],
      [...duties, "often"],
      [0, 300, 4000, null],
      units,
      answers,
      ["electric", "Gas", "induction", "coal", null],
      answers,
      [750, 751, 1500, 1501, null],
      [84.9, 85, 100, null],
    ],
    further: [
      ...combined(
        ["CA-2022", "WA-2021", "62.2-2016", "62.2-2010", "ENERGY-STAR-3.1"],
        ["kitchen", "kitchen hood"],
        duties,
        [960, null],
        ["ip"],
        ["yes", "no", null],
        ["electric", null],
      ),
      ...combined(
        ["OR-2023", "NZ-G4"],
        ["toilet", "bathroom"],
        duties,
        [null],
        ["ip", "si"],
        [null],
        [null],
        ["yes", "no", null],
      ),
    ],
  },
  {
    id: "MIN_EFFICACY",
    base: ["IECC-2021", "bath or utility", 80, "ip"],
    tried: [named, [...fanKinds, "HRV", "in line", "shop fan"], [9.99, 10, 89.999, 90], units],
    further: combined(["IECC-2015", "IECC-2018", "IECC-2021", "10-CFR-460"], fanKinds, [
      5,
      90,
      null,
    ]),
  },
  {
    id: "MAX_SONE",
    base: ["62.2-2016", "continuous", 80, "no", "ip"],
    tried: [
      [...named, ...spellings],
      [...duties, "intermittent", "at night"],
      [399.9, 400, 1000],
      answers,
      units,
    ],
    further: combined(
      ["62.2-2019", "ENERGY-STAR-3.1"],
      duties,
      [399, 400, undefined],
      ["yes", "no"],
      ["ip", "si"],
    ),
  },
  {
    id: "DUCT_LIMIT",
    base: ["IRC-2021", "smooth", 5, 80, 1, "ip"],
    tried: [
      named,
      [...ductKinds, "rigid", "clay"],
      [2.9, 3, 4.5, 8, 12],
      [50, 50.1, 300, 301],
      [0, 2, 1.5, 20],
      units,
    ],
    further: combined(["IRC-2015", "IRC-2018"], ductKinds, [3, 4.5, 7, 9], [40, 125, 260], [0, 3]),
  },
  {
    id: "MAKEUP_AIR",
    base: ["IRC-2021", 450, "yes", "ip"],
    tried: [named, [189, 190, 191, 400, 400.1], answers, units],
    further: combined(
      ["IRC-2015", "IRC-2021"],
      [190, 200, 400, 401],
      ["yes", "no", "perhaps", null],
      ["ip", "si"],
    ),
  },
  {
    id: "DESIGN_MATCH",
    base: ["ENERGY-STAR-3.1", 80, 70, "ip"],
    tried: [[...named, "energy star v3.1"], [55.3, 100], [64.999, 65, 95, 95.001], units],
    further: combined(["energy star"], [100, 120, 55.3, 128.8], [85, 102, 115, 138, 40.3, 148.12]),
  },
  {
    id: "INFILTRATION",
    base: ["62.2-2016", 1500, 1800, 16, 0.6, "ip"],
    tried: [named, [1e-3, 1200], [900, 1e6], [8.5, 24], [0.5, 1.2], units],
    further: combined(
      setting((each) => each.infiltration),
      [700],
      [170],
      [2.6, 5],
      [0.56],
      ["ip", "si"],
    ),
  },
  {
    id: "FAN_RATE",
    base: ["62.2-2016", 90, 40, 1, "no", "new", "ip", 1800],
    tried: [
      named,
      [20, 105],
      [30, 200],
      [0.5, 1.5],
      answers,
      ["Existing", "old"],
      units,
      [900, 1e5],
    ],
    further: [
      ...combined(
        setting((each) => each.credit),
        [90],
        [30, 75],
        [0.6, undefined],
        ["yes", "no"],
        ["new", "existing"],
        ["ip", "si"],
        [1000],
      ),
      ...combined(
        ["62.2-2010"],
        [90],
        [60],
        [1],
        ["no"],
        ["new", "existing"],
        ["ip"],
        [null, undefined],
      ),
    ],
  },
  {
    id: "ON_RATE",
    base: ["62.2-2016", 72, 0.5, 3],
    tried: [named, [48, 1e-3], [0.25, 0.3333, 1, 1.01, 0.01], [1, 2.5, 4, 24, 25]],
    further: combined(
      setting((each) => each.runTime ?? each.cycle),
      [60],
      [0.1, 0.2, 0.25, 0.33, 0.35, 0.5, 0.6, 0.75, 0.8, 0.9, 1],
      [undefined, 2, 12],
    ),
  },
  {
    id: "DEFICIT",
    base: ["62.2-2016", "bathroom", 25, "no", "ip"],
    tried: [named, [...roomKinds, "bath", "attic"], [60, "none", " NONE "], answers, units],
    further: combined(
      setting((each) => each.deficits),
      roomKinds,
      [15, "none"],
      ["yes", undefined],
      ["ip", "si"],
    ),
  },
  {
    id: "DEFICIT_RATE",
    base: ["62.2-2016", 90, beside(80, 20, null, 30)],
    tried: [
      named,
      [105],
      [
        beside(null, null),
        beside(10, error, "x"),
        beside(10, "x", 5),
        beside(10, -1),
        beside(" ", 12),
        beside(0, 0),
        40,
      ],
    ],
    further: combined(
      setting((each) => each.deficits),
      [84],
      [beside(50, 12.5)],
    ),
  },
  {
    id: "BALANCED_RATE",
    base: ["IRC-2021", 60, "yes"],
    tried: [named, [75, 1e-3], answers],
    further: combined(["IMC", "WA-2021"], [90], ["no", "y", "One"]),
  },
  {
    id: "FAN_SIZE",
    base: [75, 10, beside(110, 50, 80, null, 140)],
    tried: [
      [50, 100, 140, 127.3, 1e6],
      [20, 0.5],
      [
        beside(null, null),
        beside(110, "x"),
        beside(110, 0),
        beside(error, 90),
        beside(" ", 90),
        beside(82.5, 82.5),
        90,
      ],
    ],
    further: combined([50, 73], [0, 10, null], [beside(55, 80.3, 50)]),
  },
  {
    id: "EXPECTED_OPENING",
    base: [50, list("labels"), list("areas"), "one", list("boxes"), 1.07, 1, 8, "ip"],
    tried: [
      [2, 5, 9, 20, 40, 77, 110, 160, 500],
      [list("fewLabels")],
      [list("flawed"), list("fewAreas")],
      ["two", "ONE", "three"],
      [],
      [1, 1.2],
      [3, 7],
      [4, 20],
      units,
    ],
    further: [
      ...combined(
        [6, 15, 25, 60, 150],
        [list("labels")],
        [list("areas"), list("flawed")],
        ["one", "two"],
        [list("boxes")],
        [undefined],
        [undefined, 3.5],
        [undefined, 4.5],
        ["si"],
      ),
      ...combined([6, 15, 60], [list("fewLabels")], [list("fewAreas")]),
    ],
  },
  {
    id: "PAN_STATUS",
    base: [beside(0.4, null, 0.6), 1, 0.5],
    tried: [
      [
        beside(null, null),
        beside(0.4, "x"),
        beside(0.4, error),
        beside(" ", 0.4),
        beside(-1, -1.2),
        beside(0.9, 1.4),
        beside(1.2, 1.7, 1.3),
        beside(1, 1),
        1.6,
      ],
      [0.5, 3],
      [0.2, 1],
    ],
    further: combined([beside(-0.7, -0.1), beside(1.3, 1.2), 0], [null, 1.25], [null, undefined]),
  },
  {
    id: "DEVICE_FLOW",
    base: [52, 1.03, 0.5],
    tried: [
      [4, 1e-3],
      [25, 240],
      [1, -1, 3, -3, 3.1, 25, 0.65],
    ],
    further: combined([0, 6], [240], [1, undefined]),
  },
  {
    id: "BAG_FLOW",
    base: [4, 4.8, "ip"],
    tried: [[4.3, 120], [6, 1e-3], units],
    further: combined([120], [4.8], ["si", undefined]),
  },
  {
    id: "DEVICE_SPREAD",
    base: [beside(52, 48, null, 51), 1.03, 1, 5, 2, 1],
    tried: [
      [
        beside(null, null),
        beside(52, "x"),
        beside(52, error),
        beside(52, 0),
        beside(" ", 52),
        beside(52, 52),
        beside(4, 4.1, 3.9, 4.2, 3.8),
        52,
      ],
      [25, 240],
      [0.5, -1, 4],
      [10],
      [12],
      [0.1],
    ],
    further: [
      ...combined([beside(6.1, 5.8, 6), 6], [240, 1], [-1, 0.5], [3], [null, 1], [undefined, 0.1]),
      ...combined([beside(50, 50.0001), 50], [1], [1], [0], [0], [null]),
    ],
  },
  {
    id: "AIR_DENSITY",
    base: [68, 40, 29.5, 1000, "ip"],
    tried: [
      [-40, 32, 32.02, 33, 140, 141],
      [30, 100, 101],
      [14.8, 25, 1013],
      [-1640, 5280, 20000],
      units,
    ],
    further: [
      ...combined([-20, 0, 0.01, 0.02, 25, 60], [null, 80], [undefined, 950], [null, 1500], ["si"]),
      ...combined([68], [undefined], [undefined], [undefined], [undefined]),
    ],
  },
  {
    id: "AIR_FACTOR",
    base: [1.1, 1.2],
    tried: [
      [0.5, 2, 0.075, 2.01],
      [1.204, 0.075],
    ],
    further: [[1.3]],
  },
  {
    id: "STANDARD_FLOW",
    base: [50, 1.1, 1.2],
    tried: [[90], [0.5, 2, 0.075], [1.204, 3]],
    further: [[60, 1]],
  },
  {
    id: "FLOW_CONSTANT",
    base: [0.6, 1.2, "ip"],
    tried: [[1, 1.07], [1.1, 0.075], units],
    further: combined([0.61], [1.15], ["si", undefined]),
  },
];

export const cases: readonly Case[] = subjects.flatMap(casesOf);
