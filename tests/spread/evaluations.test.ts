import { describe, expect, it } from "vitest";
import {
  acceptFrom,
  agreement,
  chanceMet,
  fullWidth,
  halfWidth,
  percentDifferences,
  repeats,
  throughOrigin,
} from "../../src/spread";

/** Standard deviation of a density on −1 to 1, by the midpoint rule. */
function deviation(density: (x: number) => number): number {
  const n = 20_000;
  let [weight, square] = [0, 0];
  for (let i = 0; i < n; i++) {
    const x = (2 * (i + 0.5)) / n - 1;
    weight += density(x);
    square += density(x) * x * x;
  }
  return Math.sqrt(square / weight);
}

describe("evaluations of type B", () => {
  it("are the standard deviations of the distributions they name", () => {
    expect(halfWidth(1)).toBeCloseTo(
      deviation(() => 1),
      8,
    );
    expect(fullWidth(2)).toBeCloseTo(
      deviation(() => 1),
      8,
    );
  });
});

describe("the evaluation of type A", () => {
  it("gives mean, deviation, the mean's spread and n − 1", () => {
    // Worked by hand: deviations −2, −1, 0, 1, 2.
    expect(repeats([3, 4, 5, 6, 7])).toEqual({
      n: 5,
      mean: 5,
      s: expect.closeTo(Math.sqrt(2.5), 14),
      u: expect.closeTo(Math.sqrt(0.5), 14),
      dof: 4,
    });
  });

  it("knows no spread from one reading, and nothing from none", () => {
    expect(repeats([3])).toMatchObject({ mean: 3, s: Number.NaN, u: Number.NaN, dof: 0 });
    expect(repeats([])).toMatchObject({ n: 0, mean: Number.NaN, u: Number.NaN });
  });
});

describe("the chance that a requirement is met", () => {
  it("is a step where nothing is uncertain", () => {
    expect([chanceMet(50, 0, 50), chanceMet(49.9, 0, 50)]).toEqual([1, 0]);
    expect(chanceMet(Number.NaN, 0, 50)).toBeNaN();
  });

  it("reaches the chance asked for at the acceptance limit", () => {
    for (const chance of [0.5, 0.8, 0.95, 0.999])
      expect(chanceMet(acceptFrom(50, 1.7, chance), 1.7, 50)).toBeCloseTo(chance, 12);
    expect(acceptFrom(50, 1.7, 0.5)).toBe(50);
  });
});

describe("regressions that cannot be drawn", () => {
  it("are refused with the reason", () => {
    expect(() => throughOrigin([0, 0], [1, 2])).toThrow("every x is 0");
    expect(() => throughOrigin([], [])).toThrow("every x is 0");
    expect(() => throughOrigin([2, 3], [1])).toThrow("2 x and 1 y");
  });

  it("have no errors without degrees of freedom", () => {
    expect(throughOrigin([2], [4])).toMatchObject({ slope: 2, dof: 0, slopeError: Number.NaN });
  });
});

describe("agreement", () => {
  it("is in percent of the reference, and its largest error has no sign", () => {
    const { bias, sd, low, high, largest, n } = agreement(
      percentDifferences([50.5, 78.4, 104], [50, 80, 100]),
    );
    expect([n, bias, sd, largest]).toEqual([3, 1, 3, 4].map((x) => expect.closeTo(x, 12)));
    expect([low, high]).toEqual([expect.closeTo(-4.88, 12), expect.closeTo(6.88, 12)]);
    expect(agreement([-7, 2]).largest).toBe(7);
  });

  it("knows no limits from one pair, and nothing from none", () => {
    expect(agreement([2])).toMatchObject({ bias: 2, low: Number.NaN, largest: 2 });
    expect(agreement([])).toMatchObject({ n: 0, bias: Number.NaN, largest: Number.NaN });
    expect(() => percentDifferences([1], [1, 2])).toThrow("1 measured and 2 reference values");
  });
});
