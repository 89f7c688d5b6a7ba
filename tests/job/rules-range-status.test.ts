import { describe, expect, it } from "vitest";
import { rangeStatus, rangeStatusColumn, usualWindow } from "../../src/job";

describe("the range status of a pressure", () => {
  it.each([
    [-0.1, "reversed"],
    [0, "below"],
    [0.99, "below"],
    [1, "in range"],
    [4, "in range"],
    [8, "in range"],
    [8.01, "above"],
    [100, "above"],
  ] as const)("%d Pa is %s in the usual window, whose ends belong to it", (pressure, status) => {
    expect(rangeStatus(pressure, usualWindow.low, usualWindow.high)).toBe(status);
  });

  it("is nothing for an unknown pressure", () => {
    expect(rangeStatus(Number.NaN, 1, 8)).toBeUndefined();
  });

  it("takes a window a row", () => {
    const low = Float64Array.of(1, 3);
    expect(rangeStatusColumn(2, low, 8, 2)).toEqual(["in range", "below"]);
  });
});
