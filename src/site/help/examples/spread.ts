import * as formulas from "../../../formulas";
import type { Example } from "./example";

export const spread: readonly Example[] = [
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
    gives: [[2.326]],
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
];
