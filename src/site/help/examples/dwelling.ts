import * as formulas from "../../../formulas";
import type { Example } from "./example";

export const dwelling: readonly Example[] = [
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
];
