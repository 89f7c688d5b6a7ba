import { describe, expect, it } from "vitest";
import { straightLine, throughOrigin } from "../../src/spread";

// NIST Statistical Reference Datasets, linear regression (two sources: certified values as quoted
// in a widely used mathematics library's tests, and recomputed).

/** Twelve digits at least: the certified values carry fifteen. */
function agrees(actual: number, certified: number): void {
  expect(Math.abs(actual / certified - 1)).toBeLessThan(1e-12);
}

describe("NoInt1, a line through the origin", () => {
  const x = Array.from({ length: 11 }, (_, i) => 60 + i);
  const fit = throughOrigin(
    x,
    x.map((each) => each + 70),
  );

  it("has the certified slope, errors and R²", () => {
    agrees(fit.slope, 2.07438016528926);
    agrees(fit.slopeError, 0.0165289256198347);
    agrees(fit.residual, 3.56753034006338);
    // Uncentred: a spreadsheet's centred R² is another number here.
    agrees(fit.r2, 0.999365492298663);
    expect(fit.dof).toBe(10);
  });
});

describe("Norris, a straight line", () => {
  const pairs =
    "0.1,0.2 338.8,337.4 118.1,118.2 888.0,884.6 9.2,10.1 228.1,226.5 668.5,666.3 998.5,996.3 449.1,448.6 778.9,777.0 559.2,558.2 0.3,0.4 0.1,0.6 778.1,775.5 668.8,666.9 339.3,338.0 448.9,447.5 10.8,11.6 557.7,556.0 228.3,228.1 998.0,995.8 888.8,887.6 119.6,120.2 0.3,0.3 0.6,0.3 557.6,556.8 339.3,339.1 888.0,887.2 998.5,999.0 778.9,779.0 10.2,11.1 117.6,118.3 228.9,229.2 668.4,669.1 449.2,448.9 0.2,0.5";
  const points = pairs.split(" ").map((pair) => pair.split(",").map(Number));
  const [y, x] = [0, 1].map((side) => points.map((point) => point[side] as number));
  const fit = straightLine(x as number[], y as number[]);

  it("has the certified coefficients, errors and R²", () => {
    expect(fit.n).toBe(36);
    agrees(fit.intercept, -0.262323073774029);
    agrees(fit.interceptError, 0.232818234301152);
    agrees(fit.slope, 1.00211681802045);
    agrees(fit.slopeError, 0.429796848199937e-3);
    agrees(fit.residual, 0.884796396144373);
    agrees(fit.r2, 0.999993745883712);
    expect(fit.dof).toBe(34);
  });
});

describe("a textbook's example 10.3 (Moore and McCabe), a straight line", () => {
  // Read in the same library's tests, where it was verified in R; nine decimals.
  it("has the standard errors that R gives", () => {
    const fit = straightLine(
      [15.6, 26.8, 37.8, 36.4, 35.5, 18.6, 15.3, 7.9, 0],
      [5.2, 6.1, 8.7, 8.5, 8.8, 4.9, 4.5, 2.5, 1.1],
    );
    expect(fit.slopeError).toBeCloseTo(0.011448491, 9);
    expect(fit.interceptError).toBeCloseTo(0.286036932, 9);
  });
});
