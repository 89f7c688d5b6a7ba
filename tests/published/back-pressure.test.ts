import { describe, expect, it } from "vitest";
import { estimateUnboxed } from "../../src/job";
import { cellOf } from "../functions/call";

/**
 * Our own illustration, no published data set: a fan on the line P = P0 − s·Q, s = 1.87 Pa/cfm,
 * with a duct that takes 43.7 Pa at the free flow of 70 cfm, and the box, (Q/(1.07·A))².
 * Recomputed apart from this project: area, flow, box pressure.
 */
const table = [
  [16, 65.275, 14.537],
  [20, 66.843, 9.756],
  [24, 67.753, 6.961],
  [32.71, 68.758, 3.859],
  [46.7, 69.381, 1.928],
  [65.4, 69.682, 0.992],
] as const;
const free = 70;

/** The reading of this fan through an opening, solved by bisection. */
function reading(area: number): { flow: number; pressure: number } {
  const duct = 43.7 / free ** 2;
  const top = 43.7 + 1.87 * free;
  let [low, high] = [0, free];
  for (let i = 0; i < 60; i++) {
    const Q = (low + high) / 2;
    if (top - 1.87 * Q > duct * Q ** 2 + (Q / (1.07 * area)) ** 2) low = Q;
    else high = Q;
  }
  return { flow: low, pressure: (low / (1.07 * area)) ** 2 };
}

describe("a fan that the box holds back: our own illustration", () => {
  it.each(table)(
    "reads through %d in² what was worked out: %d cfm at %d Pa",
    (area, flow, pressure) => {
      expect(reading(area).flow).toBeCloseTo(flow, 3);
      expect(reading(area).pressure).toBeCloseTo(pressure, 3);
      // And the box reads the flow that passes it.
      expect(cellOf("FLOW", area, reading(area).pressure) as number).toBeCloseTo(flow, 3);
    },
  );

  it.each([
    [16, 32.71],
    [20, 32.71],
    [24, 65.4],
  ])("comes within 0.1 %% of its free flow by two openings, %d and %d in²", (first, second) => {
    const unboxed = cellOf(
      "UNBOXED_FLOW",
      first,
      reading(first).pressure,
      second,
      reading(second).pressure,
    ) as number;
    expect(Math.abs(unboxed / free - 1)).toBeLessThan(0.001);
    // One opening alone is off by an order of magnitude more.
    expect(1 - reading(first).flow / free).toBeGreaterThan(10 * Math.abs(unboxed / free - 1));
  });

  it("is estimated exactly from one reading where it runs on its rated line", () => {
    const rated = [80, 60].map((flow) => ({ flow, pressure: 43.7 + 1.87 * (free - flow) }));
    const points = rated as [(typeof rated)[0], (typeof rated)[0]];
    for (const [area] of table) {
      expect(estimateUnboxed(reading(area), points).estimate).toBeCloseTo(free, 9);
      expect(estimateUnboxed(reading(area), [points[1], points[0]]).estimate).toBeCloseTo(free, 9);
    }
  });
});
