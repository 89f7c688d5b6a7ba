import { describe, expect, it } from "vitest";
import { flowBudget, verdictColumn } from "../../src/job";
import { acceptFrom, chanceMet } from "../../src/spread";
import { call, cellOf } from "../functions/call";

// A budget worked by hand from JCGM 100:2008, 4.3 and 5.1 (recomputed apart from this project):
// Q = 1.07·A·√P, 24.0 ± 0.2 in², 4.0 Pa, manometer ± max(1 %, 0.25 Pa), display 0.1 Pa, repeats
// with 0.06 Pa on the mean of five, constant known to 2 %.

/** Five readings about a mean whose standard uncertainty is 0.06 Pa: s = 0.06·√5, s² = 2.5·step². */
const step = (0.06 * Math.sqrt(5)) / Math.sqrt(2.5);
const fiveAbout = (mean: number) => [-2, -1, 0, 1, 2].map((n) => mean + n * step);
const given = (area: number, pressure: number) => ({
  readings: fiveAbout(pressure),
  area,
  areaLimit: 0.2,
  constant: 1.07,
  constantSpread: 2,
  meterPercent: 1,
  meterFloor: 0.25,
  resolution: 0.1,
});

describe("the budget of one reading of the box, worked by hand", () => {
  const budget = flowBudget(given(24, 4));

  it("has the flow and the contributions", () => {
    expect(budget.value).toBeCloseTo(51.36, 10);
    expect(Object.fromEntries(budget.lines.map((line) => [line.label, line.contribution]))).toEqual(
      {
        "flow constant": expect.closeTo(1.0272, 5),
        "opening size": expect.closeTo(0.24711, 5),
        "manometer limit": expect.closeTo(0.92665, 5),
        resolution: expect.closeTo(0.18533, 5),
        "scatter of 5 readings": expect.closeTo(0.3852, 5),
      },
    );
  });

  it("has the combined spread 1.46888 cfm, 2.860 %, and 845.8 degrees of freedom", () => {
    expect(budget.u).toBeCloseTo(1.46888, 5);
    expect((100 * budget.u) / budget.value).toBeCloseTo(2.86, 3);
    expect(2 * budget.u).toBeCloseTo(2.93776, 5);
    expect(budget.dof).toBeCloseTo(845.8, 1);
  });

  it("meets 50 cfm with a chance of 0.82274, which is too close to call at 95 %", () => {
    // A unit in the last place: the hand's sum takes the spread as rounded to 1.46888.
    expect(Math.abs(chanceMet(budget.value, budget.u, 50) - 0.82274)).toBeLessThan(1e-5);
    expect(chanceMet(51.36, 1.46888, 50)).toBeCloseTo(0.82274, 5);
    const guard = { spread: budget.u, chance: 0.95 };
    expect(verdictColumn(budget.value, 50, 1, undefined, guard)).toEqual(["too close to call"]);
    expect(verdictColumn(budget.value, 50, 1)).toEqual(["meets"]);
  });

  it("is to be accepted from 52.42 cfm on, or from 52.94 with twice the spread as guard band", () => {
    expect(acceptFrom(50, budget.u, 0.95)).toBeCloseTo(52.42, 2);
    expect(acceptFrom(50, budget.u, 0.97725)).toBeCloseTo(52.94, 2);
  });

  it("is what the worksheet function gives", () => {
    const [row] = call("FLOW_SPREAD", [fiveAbout(4)], 24, 0.2, 1.07, 2, 1, 0.25, 0.1);
    expect(row).toEqual([budget.u, budget.dof, budget.expanded]);
    expect(cellOf("CHANCE_MET", 51.36, row?.[0], 50)).toBe(chanceMet(51.36, budget.u, 50));
  });
});

describe("the same meter at 1 Pa, through twice the opening", () => {
  const budget = flowBudget(given(48, 1));

  it("has 8.20 % of spread on the same flow", () => {
    expect(budget.value).toBeCloseTo(51.36, 10);
    expect(budget.lines.map(({ contribution }) => contribution)).toEqual(
      [1.0272, 0.12355, 3.70659, 0.74132, 1.5408].map((each) => expect.closeTo(each, 5)),
    );
    expect(budget.u).toBeCloseTo(4.211, 3);
    expect((100 * budget.u) / budget.value).toBeCloseTo(8.2, 2);
  });
});

describe("what one manometer limit does to a flow", () => {
  // Recomputed: half of the relative error of the pressure, per cent, printed to one decimal.
  it.each([
    [0.5, 25],
    [1, 12.5],
    [2, 6.3],
    [3, 4.2],
    [4, 3.1],
    [6, 2.1],
    [8, 1.6],
  ])("at %d Pa is ±%d %% with a limit of 1 % or 0.25 Pa", (pressure, percent) => {
    const { lines, value } = flowBudget({ ...given(24, pressure), readings: [pressure] });
    const line = lines.find(({ label }) => label === "manometer limit");
    const limit = ((line?.contribution ?? 0) * Math.sqrt(3) * 100) / value;
    expect(Math.abs(limit - percent)).toBeLessThanOrEqual(0.0501);
  });
});
