import { describe, expect, it } from "vitest";
import { call, cellOf } from "../functions/call";

// Recomputation: the flow formula with 1.07 worked apart from this project, printed to two
// decimals of cfm. Tolerance: half a unit of the last printed digit.
const pressures = [1, 2, 3, 4, 5, 6, 7, 8];
const flows: readonly (readonly number[])[] = [
  [4, 4.28, 6.05, 7.41, 8.56, 9.57, 10.48, 11.32, 12.11],
  [6, 6.42, 9.08, 11.12, 12.84, 14.36, 15.73, 16.99, 18.16],
  [10, 10.7, 15.13, 18.53, 21.4, 23.93, 26.21, 28.31, 30.26],
  [12, 12.84, 18.16, 22.24, 25.68, 28.71, 31.45, 33.97, 36.32],
  [16, 17.12, 24.21, 29.65, 34.24, 38.28, 41.94, 45.3, 48.42],
  [20, 21.4, 30.26, 37.07, 42.8, 47.85, 52.42, 56.62, 60.53],
  [25, 26.75, 37.83, 46.33, 53.5, 59.81, 65.52, 70.77, 75.66],
  [30, 32.1, 45.4, 55.6, 64.2, 71.78, 78.63, 84.93, 90.79],
  [40, 42.8, 60.53, 74.13, 85.6, 95.7, 104.84, 113.24, 121.06],
  [60, 64.2, 90.79, 111.2, 128.4, 143.56, 157.26, 169.86, 181.59],
  [80, 85.6, 121.06, 148.26, 171.2, 191.41, 209.68, 226.48, 242.11],
  [100, 107, 151.32, 185.33, 214, 239.26, 262.1, 283.1, 302.64],
];

describe("a recomputed table of flows by area and pressure", () => {
  it.each(flows)("agrees with FLOW for %d in²", (area, ...row) => {
    row.forEach((expected, i) => {
      const flow = cellOf("FLOW", area, pressures[i]) as number;
      expect(Math.abs(flow - expected)).toBeLessThanOrEqual(0.0051);
    });
  });

  it("spans √8 to one between 1 and 8 Pa, as REACH gives it", () => {
    const [low, high] = call("REACH", 24)[0] as [number, number];
    expect(high / low).toBeCloseTo(2.828, 3);
  });
});

// Recomputation, printed to two decimals of in² and three of in.
describe("a recomputed sizing table", () => {
  it.each([
    [20, 9.35, 6.61, 18.69, 3.45],
    [30, 14.02, 9.91, 28.04, 4.225],
    [50, 23.36, 16.52, 46.73, 5.454],
    [80, 37.38, 26.43, 74.77, 6.899],
    [100, 46.73, 33.04, 93.46, 7.713],
    [150, 70.09, 49.56, 140.19, 9.447],
    [200, 93.46, 66.08, 186.92, 10.908],
    [300, 140.19, 99.13, 280.37, 13.36],
    [400, 186.92, 132.17, 373.83, 15.427],
  ])("agrees with AREA_FOR and DIAMETER_FOR for %d cfm", (flow, at4, at8, at1, diameter) => {
    const area = (pressure: number | null) => cellOf("AREA_FOR", flow, pressure) as number;
    expect(Math.abs(area(4) - at4)).toBeLessThanOrEqual(0.0051);
    expect(Math.abs(area(8) - at8)).toBeLessThanOrEqual(0.0051);
    expect(Math.abs(area(1) - at1)).toBeLessThanOrEqual(0.0051);
    expect(area(null)).toBe(area(4));
    const hole = cellOf("DIAMETER_FOR", flow) as number;
    expect(Math.abs(hole - diameter)).toBeLessThanOrEqual(0.00051);
  });
});
