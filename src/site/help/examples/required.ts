import * as formulas from "../../../formulas";
import type { Example } from "./example";

export const required: readonly Example[] = [
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
      clause: "4.1.1, eq. 4.1a",
      mark: "read",
    },
  },
];
