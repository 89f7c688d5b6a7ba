import { describe, expect, it } from "vitest";
import { estimateUnboxed, unboxedBudget } from "../../src/job";

const first = { area: 32.71, areaLimit: 0.2, pressure: 3.859 };
const second = { area: 16, areaLimit: 0.3, pressure: 14.537 };
const meter = { meterPercent: 1, meterFloor: 0.25, resolution: 0.1, zeroLimit: 0.1 };
const given = { first, second, constant: 1.07, constantSpread: 2, ...meter };

/** The straight line through two readings at 0 Pa, written out apart from the formula. */
function line(K: number, A1: number, P1: number, A2: number, P2: number): number {
  const [Q1, Q2] = [K * A1 * Math.sqrt(P1), K * A2 * Math.sqrt(P2)];
  return Q1 - (P1 * (Q2 - Q1)) / (P2 - P1);
}

describe("the flow without the box from two openings", () => {
  it("is the straight line at 0 Pa, whichever reading comes first", () => {
    const { value, u } = unboxedBudget(given);
    expect(value).toBeCloseTo(line(1.07, 32.71, 3.859, 16, 14.537), 10);
    const turned = unboxedBudget({ ...given, first: second, second: first });
    expect(turned.value).toBeCloseTo(value, 10);
    expect(turned.u).toBeCloseTo(u, 10);
  });

  it("has the spread that shifting each input shows, the zero in both readings at once", () => {
    const at = (dK = 0, dA1 = 0, dP1 = 0, dA2 = 0, dP2 = 0) =>
      line(1.07 + dK, 32.71 + dA1, 3.859 + dP1, 16 + dA2, 14.537 + dP2);
    /** What a small part of a standard spread does, scaled up again. */
    const effect = (...spreads: readonly number[]) => {
      const h = 1e-4;
      const [up, down] = [h, -h].map((step) => at(...spreads.map((u) => u * step)));
      return ((up as number) - (down as number)) / (2 * h);
    };
    const [root3, root12] = [Math.sqrt(3), Math.sqrt(12)];
    const parts = [
      effect(0.0214),
      effect(0, 0.2 / root3),
      effect(0, 0, 0, 0.3 / root3),
      effect(0, 0, 0.25 / root3),
      effect(0, 0, 0, 0, 0.25 / root3),
      effect(0, 0, 0.1 / root3, 0, 0.1 / root3),
      effect(0, 0, 0.1 / root12),
      effect(0, 0, 0, 0, 0.1 / root12),
    ];
    expect(unboxedBudget(given).u).toBeCloseTo(Math.hypot(...parts), 6);
  });

  it("grows more uncertain as the two pressures draw near", () => {
    const near = { ...second, area: 23, pressure: 7.72 };
    expect(unboxedBudget({ ...given, second: near }).u).toBeGreaterThan(unboxedBudget(given).u);
  });

  // Our own limits, common practice: no outside number says where a line is worth drawing.
  it("refuses pressures less than 2:1 apart, equal areas, and a pressure of 0", () => {
    const same = { ...second, pressure: 7.7 };
    expect(() => unboxedBudget({ ...given, second: same })).toThrow(
      "pressures of 3.859 and 7.7 Pa are too near each other",
    );
    expect(() => unboxedBudget({ ...given, second: { ...second, area: 32.71 } })).toThrow(
      "both readings are through the same area",
    );
    expect(() => unboxedBudget({ ...given, second: { ...second, pressure: 0 } })).toThrow(
      "above 0 Pa",
    );
  });

  it("refuses what no fan gives: a flow that rises with pressure, or falls by half over 4 Pa", () => {
    const read = (area: number, pressure: number, area2: number, pressure2: number) => () =>
      unboxedBudget({
        ...given,
        first: { area, areaLimit: 0.2, pressure },
        second: { area: area2, areaLimit: 0.2, pressure: pressure2 },
      });
    expect(read(12, 4, 24, 8)).toThrow("the flow rises from 4 to 8 Pa");
    expect(read(24, 8, 12, 4)).toThrow("the flow rises from 4 to 8 Pa");
    expect(read(24, 4, 12, 8)).toThrow("falls by more than 5 % for each Pa");
    expect(read(24, 4, 12, 4.0001)).toThrow("too near each other");
  });
});

describe("the estimate from the fan's rating", () => {
  const rated = [
    { flow: 80, pressure: 25 },
    { flow: 60, pressure: 62.4 },
  ] as const;

  it("is no less than the reading, and no more than the fan's line allows without a duct", () => {
    const { estimate } = estimateUnboxed({ flow: 67.753, pressure: 6.961 }, rated);
    expect(estimate).toBeGreaterThan(67.753);
    expect(estimate).toBeLessThan(67.753 + 6.961 / 1.87);
  });

  it("is the reading itself at no box pressure", () => {
    expect(estimateUnboxed({ flow: 65, pressure: 0 }, rated).estimate).toBeCloseTo(65, 10);
  });

  it("reaches the end of the fan's line where there is no duct", () => {
    // On the line at 25 Pa the box takes all of the fan's pressure: 80 + 25/1.87.
    const { estimate } = estimateUnboxed({ flow: 80, pressure: 25 }, rated);
    expect(estimate).toBeCloseTo(80 + 25 / 1.87, 9);
  });

  it("refuses a rating that does not fall, and a reading above it", () => {
    const rising = [{ flow: 60, pressure: 25 }, rated[1]] as const;
    expect(() => estimateUnboxed({ flow: 50, pressure: 4 }, rising)).toThrow(
      "rated 60 at 25 Pa and 60 at 62.4 Pa: a fan's flow falls as its pressure rises",
    );
    expect(() => estimateUnboxed({ flow: 95, pressure: 4 }, rated)).toThrow(
      "a flow of 95 at 4 Pa lies above the fan's rated line",
    );
  });
});
