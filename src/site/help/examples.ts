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
];
