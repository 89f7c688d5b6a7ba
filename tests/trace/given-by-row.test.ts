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
