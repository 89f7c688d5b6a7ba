import { describe, expect, it } from "vitest";
import { oneValue } from "../../src/algebra";
import { findEdition } from "../../src/editions";
import { betweenTwoRows, dwellingRateEquation, runningRate } from "../../src/formulas";
import { cellOf } from "../functions/call";

// International Residential Code 2021. Whole numbers: no tolerance.
describe("IRC table M1505.4.3(1), cfm (read)", () => {
  const table: readonly (readonly [upTo: number, ...cells: number[]])[] = [
    [1500, 30, 45, 60, 75, 90],
    [3000, 45, 60, 75, 90, 105],
    [4500, 60, 75, 90, 105, 120],
    [6000, 75, 90, 105, 120, 135],
    [7500, 90, 105, 120, 135, 150],
    [20000, 105, 120, 135, 150, 165],
  ];
  const bedrooms = [
    [0, 1],
    [2, 3],
    [4, 5],
    [6, 7],
    [8, 9, 20],
  ];

  it.each(table)("up to %d ft² has the five rates DWELLING_RATE gives", (edge, ...row) => {
    row.forEach((cell, i) => {
      for (const n of bedrooms[i] ?? [])
        for (const area of edge === 20000 ? [7501, 20000] : [edge - 1499, edge])
          for (const method of ["table", null])
            expect(cellOf("DWELLING_RATE", "IRC-2021", area, n, method)).toBe(cell);
    });
  });

  it("is equation 15-1 at the upper corner of each cell: 1, 3, 5, 7 and, in the last column, 9 bedrooms", () => {
    // Two sources for the equation; the last area row has no upper corner: 9000 ft² gives it.
    for (const [edge, ...row] of table)
      row.forEach((cell, i) => {
        const A = edge === 20000 ? 9000 : edge;
        const N = [1, 3, 5, 7, 9][i] as number;
        expect(oneValue(dwellingRateEquation, { a: 0.01, A, b: 7.5, N })).toBeCloseTo(cell, 10);
        expect(cellOf("DWELLING_RATE", "IRC-2021", A, N, "equation") as number).toBeCloseTo(
          cell,
          10,
        );
      });
  });
});

describe("IRC table M1505.4.3(2), run-time factors (read)", () => {
  const runTime = findEdition("IRC-2021").runTime;

  it("has its six columns, each for a 4-hour segment", () => {
    expect(runTime?.segmentHours).toBe(4);
    expect(runTime?.rows).toEqual([
      [0.25, 4],
      [0.33, 3],
      [0.5, 2],
      [0.66, 1.5],
      [0.75, 1.3],
      [1, 1],
    ]);
  });

  it("is read along a straight line between its columns, as its footnote permits", () => {
    // Half way between 50 and 66 %: half way between 2 and 1.5. Worked by hand.
    const factor = oneValue(betweenTwoRows, { x: 0.58, x1: 0.5, y1: 2, x2: 0.66, y2: 1.5 });
    expect(factor).toBeCloseTo(1.75, 12);
    expect(oneValue(runningRate, { R: 60, m: factor })).toBeCloseTo(105, 10);
  });
});

describe("IRC table M1505.4.4, local exhaust, cfm (two sources: IMC 403.3.2.3; a Pathnet page)", () => {
  it.each([
    ["kitchen", "on demand", 100],
    ["kitchen", "continuous", 25],
    ["kitchen hood", "on demand", 100],
    ["kitchen hood", "continuous", 25],
    ["bathroom", "on demand", 50],
    ["bathroom", "continuous", 20],
    ["toilet", "on demand", 50],
    ["toilet", "continuous", 20],
  ])("%s, %s: %d", (room, duty, expected) => {
    expect(cellOf("ROOM_RATE", "IRC-2021", room, duty)).toBe(expected);
  });

  it("asks less of a continuous kitchen than the air changes of ASHRAE 62.2 do", () => {
    expect(cellOf("ROOM_RATE", "IRC-2021", "kitchen", "continuous")).toBeLessThan(
      cellOf("ROOM_RATE", "62.2-2016", "kitchen", "continuous", 960, "ip", "yes") as number,
    );
  });
});
