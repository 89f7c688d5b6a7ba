import * as formulas from "../../../formulas";
import { box } from "./box";
import type { Example } from "./example";

export const openings: readonly Example[] = [
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
    id: "AREA_LIMIT",
    words: "A hole of 5.5 in across, measured to 1⁄16 in.",
    args: [0.0625, 5.5],
    gives: [[0.53996]],
    tolerance: 0.000005,
    unit: "in²",
    sums: [{ formula: formulas.roundAreaLimit, given: { t: 0.0625, d: 5.5 } }],
  },
];
