import { describe, expect, it } from "vitest";
import { throughOrigin } from "../../src/spread";

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
