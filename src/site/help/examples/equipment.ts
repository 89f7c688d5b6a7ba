import * as formulas from "../../../formulas";
import { box } from "./box";
import type { Example } from "./example";

export const equipment: readonly Example[] = [
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
];
