import { describe, expect, it } from "vitest";
import {
  airRanges,
  airState,
  airViews,
  deviceBudget,
  deviceFlow,
  findInstrument,
  instrumentNames,
  instruments,
  panReading,
} from "../../src/job";

const marks = ["read", "two sources", "from memory", "common practice", "by definition"];

describe("the kinds of instrument", () => {
  it("are the named ones, each with its sources and cautions", () => {
    expect(instruments.map(({ name }) => name)).toEqual([...instrumentNames]);
    for (const { limits, procedure, cautions, source } of instruments) {
      expect(cautions.length).toBeGreaterThan(0);
      for (const each of [source, ...[...limits, ...procedure, ...cautions].map((e) => e.source)]) {
        expect(each.work).not.toBe("");
        expect(each.clause).not.toBe("");
        expect(marks).toContain(each.mark);
      }
    }
  });

  it("state a limit of the pressure or the flow, never converted into the other system", () => {
    for (const { limits } of instruments)
      for (const { percent, floorFlow } of limits) {
        expect(percent).toBeGreaterThan(0);
        expect(floorFlow?.si).toBeUndefined();
      }
  });

  it("keep both of the guides that disagree on passive hoods", () => {
    const found = findInstrument("flow hood").limits.filter((limit) => limit.found);
    expect(found.map(({ percent, upToPercent }) => [percent, upToPercent])).toEqual([
      [5, 10],
      [11, 25],
      [20, 30],
    ]);
  });

  it("are found by other words, and an unknown one lists them", () => {
    expect(findInstrument(" Powered-Flow Hood ").name).toBe("powered hood");
    expect(findInstrument("bag").exponent).toBe(-1);
    expect(() => findInstrument("wet finger")).toThrow(
      'unknown instrument "wet finger": use one of manometer, powered hood, passive hood, direct entry, timed bag, range device',
    );
  });
});

describe("the budget of a device", () => {
  it("has a line for the limit, the display and the repeats, whose shares add up to 1", () => {
    const budget = deviceBudget([52, 50, 51], 1, 1, { percent: 5, floor: 5, resolution: 1 });
    expect(budget.value).toBe(51);
    expect(budget.lines.map(({ label }) => label)).toEqual([
      "repeat readings",
      "resolution",
      "device limit",
    ]);
    expect(budget.lines.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
  });

  it("of one reading has no scatter, and of none is refused", () => {
    const one = deviceBudget([51], 1, 1, { percent: 5, floor: 0 });
    expect(one.lines.map(({ label }) => label)).toEqual(["device limit"]);
    expect(one.dof).toBe(Number.POSITIVE_INFINITY);
    expect(() => deviceBudget([], 1, 1, { percent: 5, floor: 0 })).toThrow("give one or more");
  });

  it("takes the flow at the mean reading", () => {
    const budget = deviceBudget([3.9, 4.1], 25.68, 0.5, { percent: 5, floor: 0 });
    expect(budget.value).toBeCloseTo(deviceFlow(4, 25.68, 0.5), 12);
  });
});

describe("the air at the fan", () => {
  it("says which pressure was taken and which formula holds", () => {
    const at = (rest: object, temperature = 20) => airState({ temperature, ...rest }, "si");
    expect(at({ barometer: 900, elevation: 1000 })).toMatchObject({
      pressureFrom: "barometer",
      pressure: 90000,
    });
    expect(at({ elevation: 0 }).pressureFrom).toBe("elevation");
    expect(at({})).toMatchObject({ pressureFrom: "sea level", pressure: 101325 });
    expect(at({}, 0.01).formula.id).toBe("density-over-ice");
    expect(at({}, 0.02).formula.id).toBe("density-moist-air");
    expect(at({}).given.h).toBe(0.5);
  });

  it("never takes a value in one system's unit for one in the other's barometer", () => {
    // Every barometer reading that can be meant in one unit is refused in the other.
    expect(airRanges.ip.barometer.high).toBeLessThan(airRanges.si.barometer.low);
  });

  it("has views on correcting that disagree, each with its mark", () => {
    expect(new Set(airViews.map(({ asks }) => asks))).toEqual(
      new Set(["leave", "correct", "reference"]),
    );
    for (const { source } of airViews) expect(marks).toContain(source.mark);
  });
});

describe("pan readings", () => {
  it("have a mean and a span, and none of either without a reading", () => {
    expect(panReading([0.4, 0.8, 0.6])).toEqual({
      mean: expect.closeTo(0.6, 12),
      span: expect.closeTo(0.4, 12),
      count: 3,
    });
    expect(panReading([1.2])).toEqual({ mean: 1.2, span: 0, count: 1 });
    expect(panReading([])).toBeUndefined();
  });
});
