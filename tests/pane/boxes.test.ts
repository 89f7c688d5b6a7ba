import { describe, expect, it } from "vitest";
import { readJob } from "../../src/job";
import { boxViews, tooLargeFor } from "../../src/pane/model/boxes-view";
import { planFor, usualWish } from "../../src/pane/model/cutting-list";
import { flowAxis, ticksFor } from "../../src/pane/model/flow-axis";
import { boxSheet, fileOf, gridOf, jobSheet } from "./job-file";

const job = readJob(fileOf(jobSheet, boxSheet));

describe("the boxes", () => {
  it("shows openings smallest first, round or rectangular, with their reach", () => {
    const [box] = boxViews(job);
    expect(
      box?.openings.map(({ label, shape, width, height }) => [label, shape, width, height]),
    ).toEqual([
      ["A", "round", 3, 3],
      ["B", "rectangular", 6, 8],
    ]);
    // 1.07 · 48 · √1 and · √8: common practice constant, arithmetic by hand.
    expect(box?.openings[1]?.reach.lowest).toBeCloseTo(51.36, 6);
    expect(box?.openings[1]?.reach.highest).toBeCloseTo(145.268, 3);
  });

  it("finds the gap between two openings whose reaches do not meet", () => {
    const [gap] = boxViews(job)[0]?.gaps ?? [];
    expect(gap?.lowest).toBeCloseTo(1.07 * Math.PI * 2.25 * Math.sqrt(8), 6);
    expect(gap?.highest).toBeCloseTo(51.36, 6);
  });

  it("leaves out an opening without an area, and an empty sheet without a word", () => {
    const empty = gridOf("Boxes", [
      ["Box", "Opening", "Area (in²)"],
      ["Box 9", "A", null],
    ]);
    expect(boxViews(readJob(fileOf(empty)))[0]?.openings).toEqual([]);
    expect(boxViews(readJob(fileOf(jobSheet)))).toEqual([]);
  });

  it("warns of openings above a quarter of the face, and of none without a face", () => {
    const openings = boxViews(job)[0]?.openings ?? [];
    expect(tooLargeFor(openings, 180)).toEqual([{ label: "B", share: 48 / 180 }]);
    expect(tooLargeFor(openings, 192)).toEqual([]);
    expect(tooLargeFor(openings, Number.NaN)).toEqual([]);
  });
});

describe("the planner", () => {
  it("gives diameters in decimals and sixteenths with the hole saw at or below", () => {
    const planned = planFor({ ...usualWish.ip, least: "10", most: "300" }, job.settings);
    if ("problem" in planned) throw new Error(planned.problem);
    const [cut] = planned.cuts;
    // 10 cfm at 1 Pa: 10 / 1.07 = 9.346 in², 3.4496 in across; the next sixteenth below is 3 7/16.
    expect(cut).toMatchObject({ exact: "3.4375", fraction: "3 7/16", saw: "3 3/8" });
    expect(planned.cuts.at(-1)?.saw).toBe("");
    expect(planned.cuts.at(-1)?.highest).toBeGreaterThanOrEqual(300);
    expect(cut?.lowest).toBeLessThanOrEqual(10);
  });

  it("says what to change about a wish that cannot be met", () => {
    const problem = (wish: object) => {
      const planned = planFor({ ...usualWish.ip, ...wish }, job.settings);
      return "problem" in planned ? planned.problem : "";
    };
    expect(problem({ least: "" })).toMatch(/lowest flow/i);
    expect(problem({ most: "much" })).toMatch(/highest flow/i);
    expect(problem({ overlap: "-3" })).toMatch(/overlap/i);
    expect(problem({ least: "50", most: "20" })).toMatch(/higher highest/);
    expect(problem({ least: "0.1", most: "99999" })).toMatch(/more than 8 openings/i);
  });

  it("takes a decimal comma", () => {
    expect(planFor({ ...usualWish.ip, least: "12,5" }, job.settings)).toHaveProperty("cuts");
  });

  it("steps in millimetres in a job that keeps centimetres", () => {
    const si = { ...job.settings, system: "si" as const, constant: 0.0782726 };
    const planned = planFor(usualWish.si, si);
    if ("problem" in planned) throw new Error(planned.problem);
    for (const { size } of planned.plan.openings)
      expect(size * 10).toBeCloseTo(Math.round(size * 10), 9);
  });
});

describe("the flow axis", () => {
  it("ends on ticks of 1, 2 and 5 that hold every flow, and gives equal ratios equal length", () => {
    const axis = flowAxis([7.6, 151]);
    expect([axis.low, axis.high, axis.ticks]).toEqual([5, 200, [5, 10, 20, 50, 100, 200]]);
    expect(axis.at(10) - axis.at(5)).toBeCloseTo(axis.at(100) - axis.at(50), 12);
    expect([axis.at(5), axis.at(200)]).toEqual([0, 1]);
  });

  it("leaves out ticks whose labels would touch, and none where there is room", () => {
    const axis = flowAxis([2, 1000]);
    expect(ticksFor(axis, 1000)).toEqual(axis.ticks);
    const narrow = ticksFor(axis, 180);
    expect(narrow.length).toBeLessThan(axis.ticks.length);
    expect(narrow[0]).toBe(2);
  });

  it("stands even without flows, and where all are the same", () => {
    for (const axis of [flowAxis([]), flowAxis([10]), flowAxis([Number.NaN, 0, -3])])
      expect(axis.high).toBeGreaterThan(axis.low);
  });
});
