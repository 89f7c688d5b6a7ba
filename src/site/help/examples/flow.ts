import * as formulas from "../../../formulas";
import { box } from "./box";
import type { Example } from "./example";

export const flow: readonly Example[] = [
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
];
