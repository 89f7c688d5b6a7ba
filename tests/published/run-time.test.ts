import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cellOf } from "../functions/call";

const on = (...args: readonly unknown[]) => cellOf("ON_RATE", ...args) as number;
const ashrae = ["62.2-2010", "62.2-2013", "62.2-2016", "62.2-2019", "62.2-2022"];

describe("fans that do not run all the time, ASHRAE 62.2", () => {
  // Read: 2021 UMC E 605.1.7, [62.2:4.5.1]: the average over the 3-hour cycle counts.
  it.each(ashrae)("%s: 72 cfm by half of each 3 hours are 144 cfm", (edition) => {
    expect(on(edition, 72, 0.5)).toBe(144);
    expect(on(edition, 72, 0.5, 3)).toBe(144);
    expect(on(edition, 72, 0.5, 1)).toBe(144);
  });

  // From memory: longer cycles have a table by share and turnover, which has not been found.
  it.each(ashrae)("%s: refuses cycles longer than 3 hours, in words", (edition) => {
    for (const hours of [3.1, 12, 24])
      expect(on(edition, 72, 0.5, hours)).toMatchObject({
        message: expect.stringContaining("averages plainly over 3 hours at most"),
      });
  });
});

describe("fans that do not run all the time, IRC 2021 table M1505.4.3(2) (read)", () => {
  it.each([
    [0.25, 4],
    [0.33, 3],
    [0.5, 2],
    [0.66, 1.5],
    [0.75, 1.3],
    [1, 1],
  ])("a share of %d has the factor %d", (share, factor) => {
    expect(on("IRC-2021", 60, share)).toBeCloseTo(60 * factor, 10);
  });

  // Read: interpolation between columns is permitted. Worked by hand.
  it.each([
    [0.58, 1.75],
    [0.29, 3.5],
    [0.415, 2.5],
    [0.875, 1.15],
  ])(
    "half way between two columns, %d, has half way between their factors, %d",
    (share, factor) => {
      expect(on("IRC-2021", 60, share)).toBeCloseTo(60 * factor, 10);
    },
  );

  it("does not go below 25 % of each segment", () => {
    expect(on("IRC-2021", 60, 0.249)).toMatchObject({
      message: expect.stringContaining("at least 0.25"),
    });
  });

  it("takes only cycles that run the same share in each 4-hour segment", () => {
    expect(on("IRC-2021", 60, 0.5, 2)).toBe(120);
    for (const hours of [3, 5, 8])
      expect(on("IRC-2021", 60, 0.5, hours)).toMatchObject({
        message: expect.stringContaining("4-hour segment"),
      });
  });

  // The conflict between the two: 1.3 at 75 % where the plain average is 1.333.
  it("asks for less than the plain average at 75 %", () => {
    expect(on("IRC-2021", 60, 0.75)).toBeLessThan(on("62.2-2016", 60, 0.75));
  });

  it("never asks for more while on as the share grows", () => {
    const share = fc.double({ min: 0.25, max: 1, noNaN: true });
    fc.assert(
      fc.property(share, share, (a, b) => {
        expect(on("IRC-2021", 60, Math.min(a, b))).toBeGreaterThanOrEqual(
          on("IRC-2021", 60, Math.max(a, b)),
        );
      }),
      { seed: 64, numRuns: 200 },
    );
  });
});
