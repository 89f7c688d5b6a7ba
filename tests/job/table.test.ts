import { describe, expect, it } from "vitest";
import { checkJob, fansLayout, readJob, Table } from "../../src/job";
import { grid, jobFile, today } from "./grids";

const headings = ["Unit", "Fan", "Pressure (Pa)", "Hole area (sq in)"];

describe("sheets of a kind", () => {
  const sheets = Array.from({ length: 60 }, (_, k) =>
    grid(`Building ${k + 1}`, [
      headings,
      [`${k + 1}-1`, "B1", 4, 24],
      [`${k + 1}-2`, "B1", 12, 24],
    ]),
  );
  const check = checkJob(jobFile(...sheets), today);

  it("are all read, sixty of them too", () => {
    expect(check.summary.fans).toBe(120);
    expect(check.job.fans?.table.sheets).toHaveLength(60);
    expect(check.job.fans?.table.name).toBe("Building 1, Building 2 and 58 more");
  });

  it("have their findings on the sheet on which the reading stands", () => {
    const above = check.findings.filter(({ kind }) => kind === "pressure-above");
    expect(above.map(({ sheet, cell }) => `${sheet}!${cell}`)).toEqual(
      sheets.map(({ name }) => `${name}!C3`),
    );
  });

  it("are told from a sheet that shares a heading or two", () => {
    const other = grid("Keys", [
      ["Unit", "Key"],
      ["1-1", "K1"],
    ]);
    expect(readJob(jobFile(sheets[0] as (typeof sheets)[0], other)).fans?.length).toBe(2);
  });
});

describe("readings in columns", () => {
  const card = grid("Card", [
    [null, "Bath", "Hall", "Kitchen"],
    ["Pa", 4, null, "6 Pa"],
    ["cm2", 150, 150, 300],
  ]);
  const cols = [1, 2, 3];
  const table = new Table(
    [
      {
        grid: card,
        length: 3,
        home: { rows: 0, cols },
        isRowwise: false,
        lines: new Map([
          ["room", { heading: "", rows: 0, cols }],
          ["pressure", { heading: "Pa", unit: "Pa", rows: 1, cols }],
          ["area", { heading: "cm2", unit: "cm²", rows: 2, cols }],
          ["note", { heading: "", rows: 3, cols: [1, -1, -1] }],
        ]),
      },
    ],
    fansLayout,
    "ip",
  );

  it("have values in the job's unit, each from its own cell", () => {
    expect(table.number("area", 2)).toBeCloseTo(300 / 6.4516, 9);
    expect([0, 1, 2].map((i) => table.gap("pressure", i))).toEqual([undefined, "blank", "text"]);
    expect(table.ref("pressure", 2)).toBe("D2");
  });

  it("lack a field where no cell is given for it", () => {
    expect([0, 1].map((i) => table.has("note", i))).toEqual([true, false]);
    expect(table.gap("note", 1)).toBe("absent");
    expect(table.ref("note", 1)).toBe("C1");
  });

  it("are found again by any of their cells", () => {
    expect(table.readingsAt("Card", 2, 3)).toEqual([2]);
    expect(table.readingsAt("Card", 1)).toEqual([0, 1, 2]);
    expect(table.readingsAt("Card", 9, 1)).toEqual([]);
  });
});
