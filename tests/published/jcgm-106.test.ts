import { describe, expect, it } from "vitest";
import { acceptFrom, chanceMet } from "../../src/spread";

describe("JCGM 106:2012, conformity with one limit", () => {
  // Recomputed from Φ((y − T)/u), five decimals: lower limit 50, u 2.5.
  it.each([
    [48, 0.21186],
    [50, 0.5],
    [52, 0.78814],
    [54.1125, 0.95002],
    [55, 0.97725],
  ])("gives a measured %d over 50 with u = 2.5 the chance %d", (y, chance) => {
    expect(Math.abs(chanceMet(y, 2.5, 50) - chance)).toBeLessThanOrEqual(0.51e-5);
  });

  // From memory: the two examples of 7.3.3, with the two decimals printed there.
  it("example 1 of 7.3.3, an upper limit: −5.47 V against −5.40 V, u 0.05 V, is 0.92", () => {
    // Below an upper limit is above a lower one with both signs turned.
    expect(chanceMet(5.47, 0.05, 5.4)).toBeCloseTo(0.9192, 4);
  });

  it("example 2 of 7.3.3, a lower limit: 509.7 kPa against 490 kPa, u 8.6 kPa, is 0.99", () => {
    expect(chanceMet(509.7, 8.6, 490)).toBeCloseTo(0.989, 4);
  });

  it("sets the guard band at 1.645 u for a risk of 5 %, and at 2 u for one of about 2.3 %", () => {
    // From memory and recomputed: Φ(1.645) = 0.950, Φ(2) = 0.97725.
    expect((acceptFrom(50, 2, 0.95) - 50) / 2).toBeCloseTo(1.645, 3);
    expect((acceptFrom(50, 2, 0.97725) - 50) / 2).toBeCloseTo(2, 4);
  });

  // Student's t table: 95 % one-sided quantiles 6.314 (1), 2.132 (4), 1.812 (10), 1.697 (30).
  it.each([
    [1, 6.314],
    [4, 2.132],
    [10, 1.812],
    [30, 1.697],
  ])("widens the guard band to the quantile of t with %d degrees of freedom", (dof, t) => {
    expect((acceptFrom(50, 2, 0.95, dof) - 50) / 2).toBeCloseTo(t, 3);
    expect(chanceMet(50 + 2 * t, 2, 50, dof)).toBeCloseTo(0.95, 4);
  });

  it("gives few readings less of a chance than the normal distribution would", () => {
    expect(chanceMet(52, 1, 50, 2)).toBeLessThan(chanceMet(52, 1, 50));
    expect(chanceMet(52, 1, 50, 1e6)).toBeCloseTo(chanceMet(52, 1, 50), 5);
    expect(chanceMet(52, 1, 50, 2.9)).toBe(chanceMet(52, 1, 50, 2));
  });
});
