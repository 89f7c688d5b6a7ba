import type { Example } from "./example";

export const readingAlong: readonly Example[] = [
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
    args: ["SC-2021"],
    gives: [
      ["edition", "what", "value", "unit", "work", "clause", "mark", "read in", "on", "note"],
      [
        "SC-2021",
        "makeup air, above",
        400,
        "cfm",
        "South Carolina Residential Code 2021",
        "M1503.6",
        "read",
        "South Carolina's amendment of the IRC 2021, as adopted, word for word (github.com/thexqin/us-building-codes-dataset, January 2026)",
        "2026-11-27",
        "",
      ],
    ],
    tolerance: 1e-9,
    unit: "",
    sums: [],
  },
];
