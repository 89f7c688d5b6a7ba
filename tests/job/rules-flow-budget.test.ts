import { describe, expect, it } from "vitest";
import { flowBudget } from "../../src/job";

const given = {
  area: 24,
  areaLimit: 0.2,
  constant: 1.07,
  constantSpread: 2,
  meterPercent: 1,
  meterFloor: 0.25,
};
const lineOf = (label: string, more: object) =>
  flowBudget({ ...given, pressure: 4, ...more }).lines.find((line) => line.label === label);

describe("the budget of a flow", () => {
  it("takes the larger of the manometer's percentage and its floor as limit", () => {
    expect(lineOf("manometer limit", {})?.u).toBeCloseTo(0.25 / Math.sqrt(3), 14);
    expect(lineOf("manometer limit", { meterPercent: 10 })?.u).toBeCloseTo(0.4 / Math.sqrt(3), 14);
  });

  it("has a line for display and zero only where they are given", () => {
    expect(lineOf("resolution", {})).toBeUndefined();
    expect(lineOf("resolution", { resolution: 0.1 })?.u).toBeCloseTo(0.1 / Math.sqrt(12), 14);
    expect(lineOf("zero offset", {})).toBeUndefined();
    expect(lineOf("zero offset", { zeroLimit: 0.3 })?.u).toBeCloseTo(0.3 / Math.sqrt(3), 14);
  });

  it("takes scatter from two readings or more, with n − 1 degrees of freedom", () => {
    const labels = (readings: number[]) =>
      flowBudget({ ...given, readings }).lines.map((l) => l.label);
    expect(labels([4])).toEqual(["flow constant", "opening size", "manometer limit"]);
    expect(labels([3.8, 4.2]).at(-1)).toBe("scatter of 2 readings");
    const { lines, value, dof } = flowBudget({ ...given, readings: [3.8, 4.2] });
    expect(lines.at(-1)).toMatchObject({ u: expect.closeTo(0.2, 14), dof: 1 });
    expect(value).toBeCloseTo(51.36, 12);
    expect(dof).toBeLessThan(Infinity);
  });

  it("takes a stated pressure for the value and the readings for its scatter", () => {
    const { value, lines } = flowBudget({ ...given, pressure: 4, readings: [3, 3.4] });
    expect(value).toBeCloseTo(51.36, 12);
    expect(lines.at(-1)?.u).toBeCloseTo(0.2, 14);
  });

  it("refuses a pressure at which the flow has no slope, and none at all", () => {
    expect(() => flowBudget({ ...given, pressure: 0 })).toThrow(
      "a spread needs a reading above 0 Pa",
    );
    expect(() => flowBudget({ ...given, readings: [] })).toThrow("a spread needs a reading");
  });
});
