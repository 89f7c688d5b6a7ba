import { describe, expect, it } from "vitest";
import { agreement, coverage, nextFactor } from "../../src/spread";

/**
 * Bland and Altman, Lancet 1986: peak flow by a large meter and by a small one, first readings of
 * 17 subjects (two sources: an R package's data and tests; recomputed).
 */
const large = [494, 395, 516, 434, 476, 557, 413, 442, 650, 433, 417, 656, 267, 478, 178, 423, 427];
const small = [512, 430, 520, 428, 500, 600, 364, 380, 658, 445, 432, 626, 260, 477, 259, 350, 451];
const differences = large.map((each, i) => each - (small[i] as number));

describe("the agreement of two flow meters, Bland and Altman 1986", () => {
  const found = agreement(differences);

  it("has the paper's bias, deviation and standard error", () => {
    expect(found.n).toBe(17);
    expect(found.bias).toBeCloseTo(-2.117647, 6); // −2.1 in the paper
    expect(found.sd).toBeCloseTo(38.76513, 5); // 38.8
    expect(found.biasError).toBeCloseTo(9.401925, 6); // 9.4
    expect(found.limitError).toBeCloseTo(16.2846, 4); // 16.3
  });

  it("has limits by 1.96 deviations, and the paper's by 2", () => {
    expect(found.low).toBeCloseTo(-78.0973, 4);
    expect(found.high).toBeCloseTo(73.862, 4);
    const paper = agreement(differences, 2);
    expect(paper.low).toBeCloseTo(-79.6479, 4);
    expect(paper.high).toBeCloseTo(75.4126, 4);
    // The paper rounds before it multiplies: −79.7 and 75.5.
    expect([-2.1 - 2 * 38.8, -2.1 + 2 * 38.8]).toEqual(
      [-79.7, 75.5].map((x) => expect.closeTo(x, 9)),
    );
  });

  it("has the paper's confidence intervals with Student's t of 2.12", () => {
    const t = coverage(found.n - 1);
    expect(t).toBeCloseTo(2.12, 2);
    expect(found.bias - t * found.biasError).toBeCloseTo(-22.0, 1);
    expect(found.bias + t * found.biasError).toBeCloseTo(17.8, 1);
    const paper = agreement(differences, 2);
    // 0.17: the paper's limits are rounded (0.09), so is its 2.12 · 16.3 (0.03), and its result (0.05).
    expect(Math.abs(paper.low - t * paper.limitError + 114.3)).toBeLessThan(0.17);
    expect(Math.abs(paper.high + t * paper.limitError - 110.1)).toBeLessThan(0.17);
  });

  // Prediction interval of normal data, t(n − 1)·√(1 + 1/n), from tables of t: 4.303 (2), 2.776 (4),
  // 2.262 (9), 2.093 (19).
  it.each([
    [3, 4.303 * Math.sqrt(4 / 3)],
    [5, 3.041],
    [10, 2.262 * Math.sqrt(1.1)],
    [20, 2.093 * Math.sqrt(1.05)],
  ])("puts the next of %d differences within so many deviations: %d", (n, factor) => {
    expect(nextFactor(n)).toBeCloseTo(factor, 2);
    expect(nextFactor(n)).toBeGreaterThan(1.96);
  });

  it("has limits for the next pair that are wider than those of agreement", () => {
    const factor = coverage(16) * Math.sqrt(1 + 1 / 17);
    expect(found.nextHigh).toBeCloseTo(found.bias + factor * found.sd, 10);
    expect(found.nextLow).toBeLessThan(found.low);
  });
});
