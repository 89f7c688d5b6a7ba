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
