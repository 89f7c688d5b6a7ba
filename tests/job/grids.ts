import type { CellValue } from "../../src/cells";
import type { Grid, JobFile } from "../../src/job";
import { readWorkbook } from "../../src/reading";

/** A cell as a test writes it: a value, or a formula with the value it stores. */
export type TestCell = CellValue | FormulaCell;

interface FormulaCell {
  readonly formula: string;
  readonly value: CellValue;
}

const isFormula = (cell: TestCell): cell is FormulaCell =>
  typeof cell === "object" && cell !== null && "formula" in cell;

/** A sheet from rows of cells. */
export function grid(name: string, rows: readonly (readonly TestCell[])[]): Grid {
  const at = (row: number, col: number): TestCell => rows[row]?.[col] ?? null;
  return {
    name,
    rowCount: rows.length,
    colCount: Math.max(0, ...rows.map((row) => row.length)),
    value: (row, col) => {
      const cell = at(row, col);
      return isFormula(cell) ? cell.value : cell;
    },
    formula: (row, col) => {
      const cell = at(row, col);
      return isFormula(cell) ? cell.formula : null;
    },
  };
}

export function jobFile(...sheets: Grid[]): JobFile {
  return { sheets, recognise: readWorkbook };
}

/** 2026-11-25. */
export const today = 46351;

/** A sound box with three openings, checked in March 2026. */
export const boxes = grid("Boxes", [
  [
    "Box",
    "Opening",
    "Shape",
    "Diameter or width (in)",
    "Height (in)",
    "Area (in²)",
    "Constant",
    "Checked on",
  ],
  ["One", "A", "rectangular", 3, 4, 12, 1.07, 46085],
  ["One", "B", "rectangular", 4, 6, 24, 1.07, 46085],
  ["One", "C", "rectangular", 6, 8, 48, 1.07, 46085],
]);

export const dwellings = grid("Dwellings", [
  ["Dwelling", "Floor area (ft²)", "Bedrooms"],
  ["Lot 1", 1400, 2],
]);

export const settings = grid("Job", [
  ["Setting", "Value"],
  ["Edition", "IRC-2021"],
  ["Units", "ip"],
]);

export const fanHeadings = [
  "Dwelling",
  "Fan",
  "Room kind",
  "Duty",
  "Rated flow (cfm)",
  "Box",
  "Openings in use",
  "Open area (in²)",
  "Box pressure (Pa)",
  "Flow (cfm)",
  "Required (cfm)",
  "Tester",
  "Date",
  "Note",
];

/** A sound fan row: 24 in² at 4.5 Pa is 54.5 cfm where 50 are required. */
export const soundFan = {
  Dwelling: "Lot 1",
  Fan: "B1",
  "Room kind": "bathroom",
  Duty: "on demand",
  "Rated flow (cfm)": 80,
  Box: "One",
  "Openings in use": "B",
  "Open area (in²)": 24,
  "Box pressure (Pa)": 4.5,
  "Flow (cfm)": 54.5,
  "Required (cfm)": 50,
  Tester: "R. K.",
  Date: 46300,
  Note: null,
} as const;

export type FanCells = Partial<Record<keyof typeof soundFan, TestCell>>;

/** A whole job with these fan rows, each a sound row with some cells changed. */
export function jobWith(...fans: FanCells[]): JobFile {
  const rows = fans.map((change) => {
    const cells: Record<string, TestCell> = { ...soundFan, ...change };
    return fanHeadings.map((heading) => cells[heading] ?? null);
  });
  return jobFile(settings, dwellings, boxes, grid("Fans", [fanHeadings, ...rows]));
}

/** A job of that one dwelling under an edition, its fan rows with whatever headings they have. */
export function jobUnder(edition: string, ...rows: Readonly<Record<string, TestCell>>[]): JobFile {
  const headings = [...new Set(rows.flatMap(Object.keys))];
  return jobFile(
    grid("Job", [
      ["Edition", edition],
      ["Units", "ip"],
    ]),
    dwellings,
    boxes,
    grid("Fans", [headings, ...rows.map((cells) => headings.map((key) => cells[key] ?? null))]),
  );
}
