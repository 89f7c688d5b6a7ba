import { describe, expect, it } from "vitest";
import { readJob } from "../../src/job";
import { lines, trace, withRow } from "../../src/trace";
import { grid, jobFile } from "../job/grids";

const pressures = [4.1, 2.9, 5.3, 3.6, 2.2, 6.1, 4.8, 3.1, 5.7, 2.6];

/** A firm's sheet of typed flows, the third of them another than its row gives. */
function traced(row: number, col: number) {
  const rows = pressures.map((pressure, i) => {
    const area = i % 2 ? 24 : 48;
    const flow = Math.round(10.7 * area * Math.sqrt(pressure)) / 10;
    return [`Lot ${i + 1}`, i % 2 ? "Bath" : "Kitchen", area, pressure, i === 2 ? 99 : flow];
  });
  const file = jobFile(grid("Log", [["Lot", "Room", "Open in2", "Box Pa", "cfm"], ...rows]));
  return withRow(trace(file, "Log", row, col), readJob(file));
}

describe("a typed flow of a firm's sheet", () => {
  it("is traced to constant, area and pressure of its row, and agrees as it is rounded", () => {
    const found = traced(1, 4);
    // 1.07 · 48 · √4.1
    expect(found).toMatchObject({
      given: "1.07 × 48 × √4.1 = 103.996; the constant is the one that the sheet's flows give",
      agreement: { state: "agrees" },
    });
    expect(found.reads.flatMap(({ cells }) => cells.map(({ name }) => name))).toEqual([
      "Log!C2",
      "Log!D2",
    ]);
  });

  it("that does not follow from its row is told to differ", () => {
    const told = lines(traced(3, 4));
    expect(told.at(-1)).toBe("  The typed value does not agree with its row.");
    expect(told).toContain(
      "  its row gives 1.07 × 48 × √5.3 = 118.24; the constant is the one that the sheet's flows give",
    );
  });

  it("is the only cell of its row that is told so", () => {
    expect(traced(1, 3).given).toBeUndefined();
  });
});

describe("a flow whose formula names cells and columns of a table", () => {
  it("is traced to them", () => {
    const formula = "BoxK*tests[[#This Row],[Open in2]]*SQRT(tests[[#This Row],[Box Pa]])";
    const log = grid("Log", [
      ["Open in2", "Box Pa", "cfm"],
      [24, 4, { formula, value: 51.36 }],
      [48, 4, { formula, value: 102.72 }],
    ]);
    const file = {
      ...jobFile(log, grid("Set", [["Constant", 1.07]])),
      names: [{ name: "BoxK", formula: "Set!$B$1" }],
      tables: [
        {
          ...{ name: "Tests", sheet: "Log", columns: ["Open in2", "Box Pa", "cfm"] },
          ...{ top: 0, left: 0, bottom: 2, right: 2 },
        },
      ],
    };
    const { reads } = trace(file, "Log", 2, 2);
    const seen = reads.flatMap(({ cells }) => cells.map(({ name, value }) => [name, value]));
    expect(seen).toEqual([
      ["Set!B1", 1.07],
      ["Log!A3", 48],
      ["Log!B3", 4],
    ]);
  });
});
