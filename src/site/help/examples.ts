import type { Formula, Source } from "../../formulas";
import * as formulas from "../../formulas";
import type { Cell, ExampleArgument } from "./topic";

/** A worked example. A test runs it through the worksheet function itself. */
export interface Example {
  readonly id: string;
  /** The case in words. */
  readonly words: string;
  readonly args: readonly ExampleArgument[];
  /** The cells that come out, row by row. */
  readonly gives: readonly (readonly Cell[])[];
  /** How far a number may lie from the one given. */
  readonly tolerance: number;
  /** Unit or words that follow the result. */
  readonly unit: string;
  /** The sums behind it, one for each number that comes out. */
  readonly sums: readonly Sum[];
  /** Where a required rate stands, as the edition's own data say. */
  readonly source?: Source;
}

export interface Sum {
  readonly formula: Formula;
  readonly given: Readonly<Record<string, number>>;
}

const labels = ["A", "B", "C"];
const areas = [4, 12, 24];
/** The openings of one box, as the examples write them: A 4 in², B 12 in², C 24 in². */
const box = [labels, areas] as const;

export const examples: readonly Example[] = [
  {
    id: "ROUND_AREA",
    words: "A round hole of 4.25 in across.",
    args: [4.25],
    gives: [[14.186]],
    tolerance: 0.0005,
    unit: "in²",
    sums: [{ formula: formulas.roundArea, given: { d: 4.25 } }],
  },
  {
    id: "RECT_AREA",
    words: "A slot of 3 by 8 in.",
    args: [3, 8],
    gives: [[24]],
    tolerance: 1e-9,
    unit: "in²",
    sums: [{ formula: formulas.rectArea, given: { w: 3, h: 8 } }],
  },
  {
    id: "OPEN_AREA",
    words: "A box has the openings A (4 in²), B (12 in²) and C (24 in²). A and C are open: 4 + 24.",
    args: ["A+C", ...box],
    gives: [[28]],
    tolerance: 1e-9,
    unit: "in²",
    sums: [],
  },
  {
    id: "AREA_FOR",
    words: "A bath fan of about 50 cfm is to hold the box at 4 Pa.",
    args: [50, 4],
    gives: [[23.364]],
    tolerance: 0.0005,
    unit: "in²",
    sums: [{ formula: formulas.areaForFlow, given: { Q: 50, P: 4, K: 1.07 } }],
  },
  {
    id: "DIAMETER_FOR",
    words: "The same fan, and the opening is to be one round hole.",
    args: [50, 4],
    gives: [[5.454]],
    tolerance: 0.0005,
    unit: "in",
    sums: [
      { formula: formulas.areaForFlow, given: { Q: 50, P: 4, K: 1.07 } },
      { formula: formulas.diameterForArea, given: { A: 23.3645 } },
    ],
  },
  {
    id: "FLOW",
    words: "24 in² are open and the manometer reads 4 Pa.",
    args: [24, 4],
    gives: [[51.36]],
    tolerance: 1e-9,
    unit: "cfm",
    sums: [{ formula: formulas.flowFromPressure, given: { K: 1.07, A: 24, P: 4 } }],
  },
  {
    id: "BOX_PRESSURE",
    words: "What the manometer will read at 51.36 cfm through 24 in².",
    args: [24, 51.36],
    gives: [[4]],
    tolerance: 1e-9,
    unit: "Pa",
    sums: [{ formula: formulas.pressureFromFlow, given: { Q: 51.36, K: 1.07, A: 24 } }],
  },
  {
    id: "REACH",
    words: "What 24 in² can read between 1 and 8 Pa: two cells side by side.",
    args: [24],
    gives: [[25.68, 72.634]],
    tolerance: 0.0005,
    unit: "cfm",
    sums: [
      { formula: formulas.flowFromPressure, given: { K: 1.07, A: 24, P: 1 } },
      { formula: formulas.flowFromPressure, given: { K: 1.07, A: 24, P: 8 } },
    ],
  },
  {
    id: "RANGE_STATUS",
    words: "8.2 Pa lies above the usual window of 1 to 8 Pa.",
    args: [8.2],
    gives: [["above"]],
    tolerance: 0,
    unit: "",
    sums: [],
  },
  {
    id: "NEXT_OPENING",
    words:
      "B (12 in²) is open and the box stands at 16 Pa. With C (24 in²) instead, 4 Pa are to be expected.",
    args: [16, 12, ...box],
    gives: [["C"]],
    tolerance: 0,
    unit: "",
    sums: [{ formula: formulas.pressureAtOtherArea, given: { P: 16, A: 12, A2: 24 } }],
  },
  {
    id: "NEXT_OPENING",
    words: "C is open and 4 Pa lie in the window: nothing need be changed.",
    args: [4, 24, ...box],
    gives: [["keep"]],
    tolerance: 0,
    unit: "",
    sums: [],
  },
  {
    id: "ROOM_RATE",
    words: "A bathroom whose fan runs on demand, under ASHRAE 62.2-2016.",
    args: ["62.2-2016", "bathroom", "on demand"],
    gives: [[50]],
    tolerance: 1e-9,
    unit: "cfm",
    sums: [],
    source: { work: "ASHRAE 62.2-2016", clause: "table 5.1", mark: "two sources" },
  },
  {
    id: "DWELLING_RATE",
    words: "1800 ft² of floor and 3 bedrooms, under ASHRAE 62.2-2016.",
    args: ["62.2-2016", 1800, 3],
    gives: [[84]],
    tolerance: 1e-9,
    unit: "cfm",
    sums: [{ formula: formulas.dwellingRateEquation, given: { a: 0.03, A: 1800, b: 7.5, N: 3 } }],
    source: {
      work: "ASHRAE 62.2-2016",
      clause: "4.1.1, eq. 4.1a (IP: read; SI eq. 4.1b: from memory)",
      mark: "from memory",
    },
  },
  {
    id: "VERDICT",
    words: "49.6 cfm in range, where 50 cfm are asked for. There is no tolerance below the rate.",
    args: [49.6, 50, "in range"],
    gives: [["short"]],
    tolerance: 0,
    unit: "",
    sums: [{ formula: formulas.margin, given: { Q: 49.6, R: 50 } }],
  },
  {
    id: "VERDICT",
    words:
      "51.36 cfm with a standard spread of 1.47 cfm, where 50 cfm are asked for: more likely met than not, but not by 95 %.",
    args: [51.36, 50, "in range", 1.47],
    gives: [["too close to call"]],
    tolerance: 0,
    unit: "",
    sums: [],
  },
  {
    id: "CHANCE_MET",
    words: "The same flow: the chance that it is truly 50 cfm or more.",
    args: [51.36, 1.46888, 50],
    gives: [[0.8227]],
    tolerance: 0.00005,
    unit: "",
    sums: [],
  },
  {
    id: "ACCEPT_FROM",
    words: "From which reading on 50 cfm are met with a chance of 95 %.",
    args: [50, 1.46888],
    gives: [[52.416]],
    tolerance: 0.0005,
    unit: "cfm",
    sums: [{ formula: formulas.acceptanceLimit, given: { R: 50, z: 1.644854, u: 1.46888 } }],
  },
  {
    id: "AREA_LIMIT",
    words: "A hole of 5.5 in across, measured to 1⁄16 in.",
    args: [0.0625, 5.5],
    gives: [[0.53996]],
    tolerance: 0.000005,
    unit: "in²",
    sums: [{ formula: formulas.roundAreaLimit, given: { t: 0.0625, d: 5.5 } }],
  },
  {
    id: "FLOW_SPREAD",
    words:
      "One reading of 4 Pa through 24 ± 0.2 in². The constant 1.07 is known to 2 %; the manometer to 1 % or 0.25 Pa, and shows 0.1 Pa. The flow is 51.36 ± 2.78 cfm.",
    args: [4, 24, 0.2, 1.07, 2, 1, 0.25, 0.1],
    gives: [[1.4175, "infinite", 2.7782]],
    tolerance: 0.00005,
    unit: "cfm",
    sums: [],
  },
  {
    id: "UNBOXED_FLOW",
    words: "A fan reads 3.859 Pa through 32.71 in² and 14.537 Pa through 16 in².",
    args: [32.71, 3.859, 16, 14.537],
    gives: [[70.012]],
    tolerance: 0.0005,
    unit: "cfm",
    sums: [
      {
        formula: formulas.unboxedFlow,
        given: { K: 1.07, A: 32.71, P: 3.859, A2: 16, P2: 14.537 },
      },
    ],
  },
  {
    id: "UNBOXED_SPREAD",
    words:
      "The same fan, areas to ± 0.2 in², the constant to 2 %, the manometer to 1 % or 0.25 Pa.",
    args: [32.71, 3.859, 16, 14.537, 1.07, 1, 0.25, 0.2, 0.2, 2],
    gives: [[2.219]],
    tolerance: 0.0005,
    unit: "cfm",
    sums: [],
  },
  {
    id: "UNBOXED_ESTIMATE",
    words:
      "A fan rated 80 cfm at 25 Pa and 60 cfm at 62.4 Pa reads 67.753 cfm with the box at 6.961 Pa.",
    args: [67.753, 6.961, 80, 25, 60, 62.4],
    gives: [[70]],
    tolerance: 0.001,
    unit: "cfm",
    sums: [
      { formula: formulas.fanLineSlope, given: { Q: 80, P: 25, Q2: 60, P2: 62.4 } },
      { formula: formulas.fanLineTop, given: { P: 25, s: 1.87, Q: 80 } },
      { formula: formulas.unboxedEstimate, given: { Q: 67.753, P: 6.961, s: 1.87, p: 174.6 } },
    ],
  },
  {
    id: "PAIR_CONSTANT",
    words: "Four pairs of one box.",
    args: [
      [12, 24, 24, 48],
      [4, 4, 2, 3],
      [25.5, 52, 36, 90],
    ],
    gives: [[1.0793, 0.0045, 3]],
    tolerance: 0.00005,
    unit: "",
    sums: [],
  },
  {
    id: "PAIR_BIAS",
    words: "Three pairs: the box is off by 1, −2 and 4 %.",
    args: [
      [50.5, 78.4, 104],
      [50, 80, 100],
    ],
    gives: [[1, 3, 3]],
    tolerance: 1e-9,
    unit: "",
    sums: [],
  },
  {
    id: "PAIR_LIMITS",
    words: "The same three pairs: 1 − 1.96 · 3 and 1 + 1.96 · 3 %, and 4 % the largest.",
    args: [
      [50.5, 78.4, 104],
      [50, 80, 100],
    ],
    gives: [[-4.88, 6.88, 4]],
    tolerance: 1e-9,
    unit: "",
    sums: [],
  },
  {
    id: "WORKING",
    words: "The sum behind =FANROW.FLOW(24, 4), as text.",
    args: ["FLOW", 24, 4],
    gives: [
      [
        "Q = K · A · √ΔP = 1.07 · 24 · √4 = 51.36 cfm — orifice equation Q = C·A·√(2·ΔP/ρ), ISO 5167-2:2003, 4 (incompressible, no approach velocity) (two sources)",
      ],
    ],
    tolerance: 0,
    unit: "",
    sums: [],
  },
  {
    id: "INFILTRATION",
    words: "1500 cfm at 50 Pa, 1800 ft², 16 ft high, a weather factor of 0.60, under 62.2-2016.",
    args: ["62.2-2016", 1500, 1800, 16, 0.6],
    gives: [[61.475]],
    tolerance: 0.0005,
    unit: "cfm",
    sums: [
      {
        formula: formulas.infiltrationByLeakageIp,
        given: { Q50: 1500, A: 1800, H: 16, Hr: 8.2, z: 0.4, w: 0.6, k: 7.3 },
      },
    ],
  },
  {
    id: "FAN_RATE",
    words:
      "An existing, detached house with 84 cfm in total, 61.146 cfm leaking in, and exhaust fans only.",
    args: ["62.2-2019", 84, 61.146, 1, "no", "existing"],
    gives: [[39.49]],
    tolerance: 0.0005,
    unit: "cfm",
    sums: [
      { formula: formulas.unbalancedShare, given: { I: 61.146, T: 84 } },
      {
        formula: formulas.fanRateAfterCredit,
        given: { T: 84, p: 61.146 / 84, I: 61.146, X: 1 },
      },
    ],
  },
  {
    id: "ON_RATE",
    words: "72 cfm, by a fan that runs half of each 3 hours.",
    args: ["62.2-2016", 72, 0.5],
    gives: [[144]],
    tolerance: 1e-9,
    unit: "cfm",
    sums: [{ formula: formulas.onRate, given: { R: 72, e: 1, f: 0.5 } }],
  },
  {
    id: "ON_RATE",
    words:
      "60 cfm under IRC-2021, by a fan that runs 58 % of each 4 hours: half way between two columns.",
    args: ["IRC-2021", 60, 0.58],
    gives: [[105]],
    tolerance: 1e-9,
    unit: "cfm",
    sums: [
      {
        formula: formulas.betweenTwoRows,
        given: { x: 0.58, x1: 0.5, y1: 2, x2: 0.66, y2: 1.5 },
      },
      { formula: formulas.runningRate, given: { R: 60, m: 1.75 } },
    ],
  },
  {
    id: "DEFICIT",
    words: "A bathroom without a fan, with an openable window.",
    args: ["62.2-2016", "bathroom", "none", "yes"],
    gives: [[30]],
    tolerance: 1e-9,
    unit: "cfm",
    sums: [{ formula: formulas.roomDeficit, given: { R: 50, M: 0, W: 20 } }],
  },
  {
    id: "DEFICIT_RATE",
    words: "84 cfm, and three rooms that lack 80, 20 and 30 cfm.",
    args: ["62.2-2016", 84, [80, 20, 30]],
    gives: [[116.5]],
    tolerance: 1e-9,
    unit: "cfm",
    sums: [{ formula: formulas.rateWithDeficits, given: { T: 84, q: 0.25, S: 130 } }],
  },
  {
    id: "BALANCED_RATE",
    words: "60 cfm, by a balanced system with ducts to the rooms.",
    args: ["IRC-2021", 60, "yes"],
    gives: [[42]],
    tolerance: 1e-9,
    unit: "cfm",
    sums: [{ formula: formulas.balancedRate, given: { T: 60, r: 0.3 } }],
  },
  {
    id: "MIN_EFFICACY",
    words: "A bath fan rated at 80 cfm, under IECC-2021.",
    args: ["IECC-2021", "bath or utility", 80],
    gives: [[2.8]],
    tolerance: 1e-9,
    unit: "cfm/W",
    sums: [],
  },
  {
    id: "MAX_SONE",
    words: "A bath fan that runs all the time.",
    args: ["62.2-2016", "continuous"],
    gives: [[1]],
    tolerance: 1e-9,
    unit: "sone",
    sums: [],
  },
  {
    id: "DUCT_LIMIT",
    words: "A fan rated at 50 cfm on flexible duct of 4 in with two elbows: 56 ft less 2 × 15.",
    args: ["IRC-2021", "flex", 4, 50, 2],
    gives: [[26]],
    tolerance: 1e-9,
    unit: "ft",
    sums: [{ formula: formulas.ductLeft, given: { L0: 56, e: 15, n: 2 } }],
  },
  {
    id: "MAKEUP_AIR",
    words: "A hood of 600 cfm, and no open-draft appliance inside.",
    args: ["IRC-2021", 600, "no"],
    gives: [["not needed"]],
    tolerance: 0,
    unit: "",
    sums: [],
  },
  {
    id: "DESIGN_MATCH",
    words: "150 cfm where 128.8 were designed: more than 15 % too much.",
    args: ["ENERGY-STAR-3.1", 128.8, 150],
    gives: [["high"]],
    tolerance: 0,
    unit: "",
    sums: [{ formula: formulas.matchTolerance, given: { D: 128.8, t: 15, s: 0.15 } }],
  },
  {
    id: "AIR_DENSITY",
    words: "A room of 68 °F and 50 % at 5280 ft, where no barometer was read.",
    args: [68, 50, null, 5280],
    gives: [[0.9862]],
    tolerance: 0.00005,
    unit: "kg/m³",
    sums: [
      { formula: formulas.celsiusFromFahrenheit, given: { F: 68 } },
      { formula: formulas.metresFromFeet, given: { f: 5280 } },
      { formula: formulas.pressureAtElevation, given: { z: 1609.344 } },
      { formula: formulas.densityMoistAir, given: { t: 20, p: 83427.5, h: 0.5 } },
    ],
  },
  {
    id: "AIR_FACTOR",
    words: "Thin air of 1 kg/m³, and a constant stated for 1.2 kg/m³.",
    args: [1],
    gives: [[1.09545]],
    tolerance: 0.000005,
    unit: "",
    sums: [{ formula: formulas.densityFactor, given: { rho0: 1.2, rho: 1 } }],
  },
  {
    id: "STANDARD_FLOW",
    words: "60 cfm of that air, as standard air.",
    args: [60, 1],
    gives: [[50]],
    tolerance: 1e-9,
    unit: "cfm",
    sums: [{ formula: formulas.standardFlow, given: { Q: 60, rho: 1, rho0: 1.2 } }],
  },
  {
    id: "FLOW_CONSTANT",
    words: "A coefficient of 0.6063 at 1.2 kg/m³ is the usual constant.",
    args: [0.6063, 1.2],
    gives: [[1.07]],
    tolerance: 0.00005,
    unit: "",
    sums: [{ formula: formulas.constantIp, given: { C: 0.6063, rho: 1.2 } }],
  },
  {
    id: "DEVICE_FLOW",
    words: "A device of constant 25.68 and exponent 0.5 shows 4 Pa.",
    args: [4, 25.68, 0.5],
    gives: [[51.36]],
    tolerance: 1e-9,
    unit: "cfm",
    sums: [{ formula: formulas.deviceFlow, given: { K: 25.68, r: 4, n: 0.5 } }],
  },
  {
    id: "BAG_FLOW",
    words: "A bag of 4 ft³ is full after 4.8 s.",
    args: [4, 4.8],
    gives: [[50]],
    tolerance: 1e-9,
    unit: "cfm",
    sums: [{ formula: formulas.bagFlowIp, given: { V: 4, t: 4.8 } }],
  },
  {
    id: "DEVICE_SPREAD",
    words:
      "A hood shows 51 cfm in steps of 1 cfm; its limit is 5 % or 5 cfm. The flow is 51 ± 5.7 cfm.",
    args: [51, 1, 1, 5, 5, 1],
    gives: [[2.9011, "infinite", 5.6861]],
    tolerance: 0.00005,
    unit: "cfm",
    sums: [],
  },
  {
    id: "PAN_STATUS",
    words: "The pan stands at 1.4 Pa, above the usual limit of 1 Pa.",
    args: [1.4],
    gives: [["leaks"]],
    tolerance: 0,
    unit: "",
    sums: [],
  },
  {
    id: "FAN_SIZE",
    words: "50 cfm are asked for, 20 % are added, and fans are rated 50, 80 and 110 cfm.",
    args: [50, 20, [50, 80, 110]],
    gives: [[80]],
    tolerance: 1e-9,
    unit: "cfm",
    sums: [],
  },
  {
    id: "EXPECTED_OPENING",
    words: "A fan of 50 cfm is expected: C alone will stand at 3.8 Pa.",
    args: [50, ...box],
    gives: [["C"]],
    tolerance: 0,
    unit: "",
    sums: [{ formula: formulas.pressureFromFlow, given: { Q: 50, K: 1.07, A: 24 } }],
  },
  {
    id: "SOURCE",
    words: "Where the 50 cfm of a bathroom fan on demand stand.",
    args: ["62.2-2016", "bathroom", "on demand"],
    gives: [["ASHRAE 62.2-2016, table 5.1 (two sources)"]],
    tolerance: 0,
    unit: "",
    sums: [],
  },
  {
    id: "EDITIONS",
    words: "A code of which one number is known here: a row of headings and a row.",
    args: ["IMC-2021"],
    gives: [
      ["edition", "what", "value", "unit", "work", "clause", "mark", "note"],
      [
        "IMC-2021",
        "balanced rules, reduction",
        0.3,
        "1",
        "IMC 2021",
        "403.3.2, exception (30 %: read; that it stands in this year: from memory)",
        "from memory",
        "verify against your copy",
      ],
    ],
    tolerance: 1e-9,
    unit: "",
    sums: [],
  },
];
