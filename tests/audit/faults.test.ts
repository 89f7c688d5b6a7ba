import { describe, expect, it } from "vitest";
import { auditFormulas } from "../../src/audit";
import type { CellValue } from "../../src/cells";
import { toJobFile } from "../../src/command";
import type { Grid } from "../../src/job";
import { type CellSpec, Workbook } from "../../src/workbook";
import { grid, jobFile, type TestCell } from "../job/grids";

const rows = 30;
const by = (formula: string, value: CellValue = 1): TestCell => ({ formula, value });

/** A firm's own sheet that is none of a job's: names, two numbers, and what follows from them. */
function soundRow(n: number): TestCell[] {
  return [
    `Item ${n}`,
    n + 0.5,
    2 * n + 0.25,
    by(`B${n}*C${n}*1.07`),
    by(`FANROW.FLOW(B${n},C${n},1.07)`),
    by(`SUM(B${n}:C${n})`),
    by(`INDEX(List!$B$2:$B$9,MATCH(A${n},List!$A$2:$A$9,0))`),
    by(`D${n}/E${n}`),
  ];
}

const headings = ["Name", "Width", "Height", "Product", "Flow", "Sum", "Looked up", "Ratio"];
const list = grid("List", [
  ["Name", "Value"],
  ...Array.from({ length: 8 }, (_, i) => [`Item ${i + 2}`, i]),
]);
const boxes = grid("Boxes", [
  ["Box", "Opening", "Area (in²)", "Constant"],
  ...["A", "B", "C"].map((label, i) => ["One", label, 12 * (i + 1), 1.07]),
]);

/** Cells that differ from the sound ones, by name. */
function firm(changes: Readonly<Record<string, TestCell>>, looks: Partial<Grid> = {}): Grid {
  const cells: TestCell[][] = [headings];
  for (let n = 2; n <= rows + 1; n++) cells.push(soundRow(n));
  for (const [cell, change] of Object.entries(changes)) {
    const row = cells[Number(cell.slice(1)) - 1] as TestCell[];
    row[cell.charCodeAt(0) - 65] = change;
  }
  return { ...grid("Data", cells), ...looks };
}

const found = (...sheets: Grid[]) =>
  auditFormulas(jobFile(...sheets), []).map(({ sheet, cell, kind }) => `${sheet}!${cell} ${kind}`);

describe("a workbook with a fault of every kind", () => {
  const data = firm(
    {
      D5: 12,
      E6: "n/a",
      D8: by("B7*C7*1.07"),
      E9: by("FANROW.FLOW($B$9,C9,1.07)"),
      G10: by("INDEX(List!B2:B9,MATCH(A10,List!$A$2:$A$9,0))"),
      D11: by("B11*C11*1.17"),
      F11: by("SUM(B11:C11)*1.02"),
      G12: by("INDEX(List!$B$2:$B$7,MATCH(A12,List!$A$2:$A$9,0))"),
      E13: by("FANROW.BOX_PRESSURE(B13,C13,1.07)"),
      E14: by("FANROW.FLOWS(B14,C14,1.07)"),
      H15: by("D15/[1]Old!E15"),
      H16: by("B16/E16"),
      B19: "4.5",
      F21: "=SUM(B21:C21)",
      H22: null,
      // As another program writes the same formula.
      E23: by("[2]!_xldudf_FANROW_FLOW(B23,C23,1.07)"),
    },
    {
      hiddenRow: (row) => row === 16,
      numberFormat: (row, col) => (row === 19 && col === 7 ? "@" : "General"),
    },
  );
  const totals = grid("Totals", [["Total of the products", by("SUM(Data!D2:D25)")]]);
  const planted = [
    "Data!D5 formula-typed-over",
    "Data!E6 formula-typed-over",
    "Data!D8 formula-other-row",
    "Data!E9 formula-fixed-reference",
    "Data!G10 formula-fixed-reference",
    "Data!D11 formula-other-constant",
    "Data!F11 formula-other-constant",
    "Data!G12 formula-short-range",
    "Data!E13 formula-other-function",
    "Data!E14 formula-unknown-function",
    "Data!H15 formula-other-workbook",
    "Data!H16 formula-differs",
    "Data!A17 row-hidden",
    "Data!B19 number-stored-as-text",
    "Data!H20 cell-formatted-as-text",
    "Data!F21 cell-formatted-as-text",
    "Data!H22 formula-missing",
    "Totals!B1 formula-short-range",
    "Boxes!C1 column-hidden",
  ];
  const hiddenArea = { ...boxes, hiddenCol: (col: number) => col === 2 };

  it("has each of them found, and nothing else", () => {
    expect(found(data, list, totals, hiddenArea).sort()).toEqual([...planted].sort());
  });

  it("has nothing found where nothing is planted", () => {
    const sound = grid("Totals", [["Total of the products", by("SUM(Data!D2:D31)")]]);
    expect(found(firm({}), list, sound, boxes)).toEqual([]);
  });

  it("says of each what is wrong, what it does and how to mend it", () => {
    for (const finding of auditFormulas(jobFile(data, list, totals, hiddenArea), []))
      for (const text of [finding.what, finding.effect, finding.mend]) {
        expect(text.length).toBeGreaterThan(10);
        expect(text).not.toMatch(/NaN|undefined|Infinity|\[object|R\[|C\[/);
      }
  });

  it("names what the formula uses and what the rows beside it would use", () => {
    const words = new Map(
      auditFormulas(jobFile(data, list), []).map(({ cell, what }) => [cell, what]),
    );
    expect(words.get("D8")).toBe("the formula uses B7 where the rows beside it would use B8");
    expect(words.get("E9")).toBe("$B$9 stands where the rows beside it would have B9");
    expect(words.get("D11")).toBe("the formula uses 1.17 where the rows beside it would use 1.07");
    expect(words.get("G12")).toContain("List!$B$2:$B$7");
    expect(words.get("E13")).toContain("FANROW.BOX_PRESSURE");
  });

  it("restores a formula from the nearest sound row", () => {
    const mends = new Map(
      auditFormulas(jobFile(data, list), []).map(({ cell, apply }) => [cell, apply?.writes]),
    );
    expect(mends.get("D5")).toEqual([{ cell: "D5", formulaOf: "D4" }]);
    expect(mends.get("E14")).toEqual([{ cell: "E14", formulaOf: "E15" }]);
    expect(mends.get("B19")).toEqual([{ cell: "B19", value: 4.5 }]);
  });

  it("is silent on cells of which a finding tells already", () => {
    const file = jobFile(data, list, totals, hiddenArea);
    const known = auditFormulas(file, []).filter(({ kind }) => kind === "formula-typed-over");
    expect(known).toHaveLength(2);
    expect(auditFormulas(file, known).map(({ cell }) => cell)).not.toContain("D5");
    expect(auditFormulas(file, known)).toHaveLength(planted.length - 2);
  });
});

describe("a fault in all rows alike", () => {
  const whole = (formula: (n: number) => string) => {
    const changes: Record<string, TestCell> = {};
    for (let n = 2; n <= rows + 1; n++) changes[`G${n}`] = by(formula(n));
    return found(firm(changes), list);
  };

  it("is told once, at its first cell, when a lookup ends before the list does", () => {
    expect(whole((n) => `VLOOKUP(A${n},List!$A$2:$B$7,2,FALSE)`)).toEqual([
      "Data!G2 formula-short-range",
    ]);
  });

  it("is told once when a lookup range slides down with its row", () => {
    expect(whole((n) => `VLOOKUP(A${n},List!A${n}:B${n + 7},2,FALSE)`)).toEqual([
      "Data!G2 formula-fixed-reference",
    ]);
  });

  it("is told once when no such function is there, or another workbook is read", () => {
    expect(whole((n) => `FANROW.NO_SUCH(A${n})`)).toEqual(["Data!G2 formula-unknown-function"]);
    expect(whole((n) => `'[Old job.xlsx]List'!B${n}`)).toEqual(["Data!G2 formula-other-workbook"]);
  });
});

describe("a file", () => {
  it("tells what is hidden and what is formatted as text", () => {
    const workbook = Workbook.create();
    const text = workbook.addStyle({ numberFormat: "@" });
    const lines = Array.from({ length: 6 }, (_, i): CellSpec[] => [
      { value: i + 1 },
      { formula: `A${i + 1}*2`, value: 2 * (i + 1), ...(i === 3 ? { style: text } : {}) },
    ]);
    workbook.addSheet("Sums", { rows: lines });
    expect(found(...toJobFile(workbook).sheets)).toEqual(["Sums!B4 cell-formatted-as-text"]);
  });
});
