import type { CellValue } from "../../src/cells";
import type { Grid, JobFile } from "../../src/job";

interface Computed {
  readonly value: CellValue;
  readonly formula: string;
}
type Cell = CellValue | Computed;

/** A sheet from rows of cells. */
export function gridOf(name: string, rows: readonly (readonly Cell[])[]): Grid {
  const cell = (row: number, col: number): Cell => rows[row]?.[col] ?? null;
  return {
    name,
    rowCount: rows.length,
    colCount: Math.max(0, ...rows.map((row) => row.length)),
    value: (row, col) => {
      const found = cell(row, col);
      return isFormula(found) ? found.value : found;
    },
    formula: (row, col) => {
      const found = cell(row, col);
      return isFormula(found) ? found.formula : null;
    },
  };
}

export function fileOf(...sheets: readonly Grid[]): JobFile {
  return { sheets };
}

export const jobSheet = gridOf("Job", [
  ["Setting", "Value"],
  ["Edition", "IRC-2021"],
  ["Units", "ip"],
]);

export const boxSheet = gridOf("Boxes", [
  [
    "Box",
    "Opening",
    "Shape",
    "Diameter or width (in)",
    "Height (in)",
    "Count",
    "Area (in²)",
    "Constant",
  ],
  ["Box 1", "B", "rectangular", 6, 8, 1, 48, 1.07],
  ["Box 1", "A", "round", 3, null, 1, Math.PI * 2.25, 1.07],
]);

export const dwellingSheet = gridOf("Dwellings", [
  ["Dwelling", "Floor area (ft²)", "Bedrooms"],
  ["Lot 1", 1600, 3],
]);

export const fanHeadings = [
  "Dwelling",
  "Fan",
  "Room kind",
  "Duty",
  "Box",
  "Openings in use",
  "Open area (in²)",
  "Reading 1 (Pa)",
  "Reading 2 (Pa)",
  "Tester",
  "Crew notes",
];

export function fanSheet(...fans: readonly (readonly Cell[])[]): Grid {
  return gridOf("Fans", [fanHeadings, ...fans]);
}

export const goodFan = ["Lot 1", "B1", "bathroom", "on demand", "Box 1", "B", 48, 2, 2, "J", null];

function isFormula(cell: Cell): cell is Computed {
  return typeof cell === "object" && cell !== null && "formula" in cell;
}
