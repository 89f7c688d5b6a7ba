import { describe, expect, it } from "vitest";
import { oneValue } from "../../src/algebra";
import { expansibility } from "../../src/formulas";

describe("the expansibility factor of ISO 5167-2:2003, 5.3.2.2", () => {
  it("for D 73.9 mm, d 22.2 mm, 100 to 99 kPa and κ 1.4 agrees to all digits", () => {
    // Two sources: printed by an open engineering library's tests and recomputed from the clause.
    const given = { beta: 0.0222 / 0.0739, p1: 1e5, p2: 9.9e4, kappa: 1.4 };
    // Sixteen printed digits; a dozen operations lose a few ulps.
    expect(Math.abs(oneValue(expansibility, given) - 0.9974739057343425)).toBeLessThan(1e-14);
  });

  it("at the 8 Pa of a box is 0.99998 and may be left out", () => {
    const given = { beta: 0.3, p1: 101325, p2: 101317, kappa: 1.4 };
    expect(oneValue(expansibility, given)).toBeCloseTo(0.99998, 5);
  });
});
