import { NORM, T } from "@formulajs/formulajs";
import { describe, expect, it } from "vitest";
import {
  coverage,
  normalChance,
  normalQuantile,
  studentChance,
  studentQuantile,
} from "../../src/spread";

const freedoms = [1, 2, 3, 4, 5, 7, 10, 16, 29, 30, 60, 99, 120, 345, 499, 500, 501, 845];

describe("the normal distribution", () => {
  // Made with mpmath 1.3 at 40 digits: erfc(−x/√2)/2.
  it.each([
    [-20, 2.75362411860623e-89],
    [-8, 6.22096057427178e-16],
    [-5, 2.86651571879194e-7],
    [-3, 0.00134989803163009],
    [-2.99, 0.00139488723549225],
    [-1.96, 0.0249978951482204],
    [-0.5, 0.308537538725987],
    [0.3, 0.617911422188953],
    [1.4, 0.919243340766229],
    [3.1, 0.999032396786782],
  ])("gives Φ(%d) to twelve digits, in the far tail too", (x, expected) => {
    expect(Math.abs(normalChance(x) / expected - 1)).toBeLessThan(1e-12);
    expect(normalChance(-x)).toBeCloseTo(1 - expected, 14);
  });

  it("agrees with an independent library, and its quantile is its inverse", () => {
    for (let x = -6; x <= 6; x += 0.37) {
      expect(Math.abs(normalChance(x) - Number(NORM.S.DIST(x, true)))).toBeLessThan(1e-10);
      // Next to 1 the chance itself carries 1e-16 only, over a density of 6e-9 at six deviations.
      expect(Math.abs(normalQuantile(normalChance(x)) - x)).toBeLessThan(1e-7);
    }
    for (const p of [1e-12, 0.001, 0.025, 0.3, 0.5, 0.75, 0.95, 0.975, 0.9999])
      expect(Math.abs(normalChance(normalQuantile(p)) / p - 1)).toBeLessThan(1e-12);
  });

  it("has the usual quantiles of printed tables", () => {
    expect(normalQuantile(0.95)).toBeCloseTo(1.6448536269514722, 13);
    expect(normalQuantile(0.975)).toBeCloseTo(1.959963984540054, 13);
    expect(normalQuantile(0.5)).toBe(0);
    expect([normalQuantile(0), normalQuantile(1)]).toEqual([-Infinity, Infinity]);
    expect(normalQuantile(1.5)).toBeNaN();
    expect([normalChance(-Infinity), normalChance(Infinity)]).toEqual([0, 1]);
    expect(normalChance(Number.NaN)).toBeNaN();
  });
});

describe("Student's t distribution", () => {
  it.each(freedoms)(
    "agrees with an independent spreadsheet library at %d degrees of freedom",
    (dof) => {
      // The library has the upper tail alone, and that to about 5e-8: its beta function is short.
      const tail = (t: number) => Number(T.DIST.RT(t, dof));
      for (const t of [0.4, 0.7, 1.5, 2.1, 2.5, 3.5, 4]) {
        expect(Math.abs(1 - studentChance(t, dof) - tail(t))).toBeLessThan(1e-7);
        expect(Math.abs(studentChance(-t, dof) - tail(t))).toBeLessThan(1e-7);
      }
      for (const p of [0.6, 0.9, 0.95, 0.975, 0.995]) {
        expect(Math.abs(1 - tail(studentQuantile(p, dof)) - p)).toBeLessThan(1e-7);
        expect(studentQuantile(1 - p, dof)).toBeCloseTo(-studentQuantile(p, dof), 11);
      }
    },
  );

  // Made with mpmath 1.3 at 40 digits: the root of its regularised incomplete beta function.
  it.each([
    [1, 0.324919696232906, 6.31375151467504, 12.7062047361747, 63.6567411628716],
    [3, 0.27667066233269, 2.35336343480182, 3.18244630528371, 5.84090930973336],
    [4, 0.270722294707597, 2.13184678632665, 2.77644510519779, 4.60409487134999],
    [7, 0.263166861352023, 1.89457860509001, 2.36462425159279, 3.49948329735049],
    [16, 0.257599194855142, 1.74588367627625, 2.11990529922125, 2.9207816224251],
    [29, 0.255683634571256, 1.6991270265335, 2.0452296421327, 2.75638590367061],
    [60, 0.254473394989531, 1.67064886490464, 2.00029782201426, 2.66028302885504],
    [345, 0.25354256086249, 1.64928230505965, 1.96686390888117, 2.590154688854],
    [500, 0.253481949851666, 1.64790685392951, 1.96471983746737, 2.58569783514194],
    [501, 0.253481680611723, 1.64790074831643, 1.96471032217548, 2.58567806669003],
    [845, 0.253426883797805, 1.64665889468945, 1.96277536329447, 2.58166009640874],
    [3000, 0.253369571666042, 1.64536170783741, 1.96075505532246, 2.57746913483861],
  ])("has its quantiles to twelve digits at %d degrees of freedom", (dof, ...expected) => {
    [0.6, 0.95, 0.975, 0.995].forEach((p, i) => {
      expect(Math.abs(studentQuantile(p, dof) / (expected[i] as number) - 1)).toBeLessThan(1e-12);
    });
  });

  // GUM table G.2, two-sided 95 % and 99 % (from memory), three decimals at most.
  it.each([
    [1, 12.71, 63.66],
    [2, 4.3, 9.92],
    [3, 3.18, 5.84],
    [4, 2.78, 4.6],
    [5, 2.57, 4.03],
    [10, 2.23, 3.17],
    [16, 2.12, 2.92],
    [20, 2.09, 2.85],
    [50, 2.01, 2.68],
    [100, 1.984, 2.626],
  ])("gives the coverage factors of printed tables at %d degrees of freedom", (dof, k95, k99) => {
    const half = (printed: number) => (String(printed).split(".")[1]?.length === 3 ? 5e-4 : 5e-3);
    expect(Math.abs(coverage(dof) - k95)).toBeLessThanOrEqual(half(k95));
    expect(Math.abs(coverage(dof, 0.99) - k99)).toBeLessThanOrEqual(half(k99));
  });

  it("is exact where it has a closed form: 1 and 2 degrees of freedom", () => {
    for (const p of [0.6, 0.9, 0.975, 0.999]) {
      expect(studentQuantile(p, 1)).toBeCloseTo(Math.tan(Math.PI * (p - 0.5)), 9);
      const q = 2 * p - 1;
      expect(studentQuantile(p, 2)).toBeCloseTo(q * Math.sqrt(2 / (1 - q * q)), 11);
    }
  });

  it("keeps its digits far out in the tail", () => {
    for (const t of [0.1, 1.7, 1.8, 3, 30, 100]) {
      const [one, two] = [Math.atan(1 / t) / Math.PI, 1 / (2 + t * t + t * Math.sqrt(2 + t * t))];
      expect(Math.abs(studentChance(-t, 1) / one - 1)).toBeLessThan(1e-12);
      expect(Math.abs(studentChance(-t, 2) / two - 1)).toBeLessThan(1e-12);
    }
  });

  it("is as quick and as sound at a million and more degrees of freedom", () => {
    // To first order in 1/ν, t lies z(z² + 1)/(4ν) from the normal z.
    for (const dof of [999_999, 1_000_001, 1e9, 1e15])
      expect(Math.abs(studentChance(studentQuantile(0.01, dof), dof) / 0.01 - 1)).toBeLessThan(
        1e-9,
      );
  });

  it("goes over from the series to the expansion without a step", () => {
    for (const p of [0.6, 0.975, 0.995]) {
      const [a, b, c] = [499, 500, 501].map((dof) => studentQuantile(p, dof)) as [
        number,
        number,
        number,
      ];
      // The leading term of t − z is g/ν, g = z(z² + 1)/4, with second difference 2g/ν³; a step
      // from one way to the other would be far above a twentieth of that, some 1e-9.
      const z = normalQuantile(p);
      const bend = (z * (z * z + 1)) / 2 / 500 ** 3;
      expect(Math.abs((a - 2 * b + c) / bend - 1)).toBeLessThan(0.05);
    }
  });

  it("is normal at infinite degrees of freedom, and takes whole ones only", () => {
    expect(studentQuantile(0.975, Infinity)).toBe(normalQuantile(0.975));
    expect(studentChance(1.2, Infinity)).toBe(normalChance(1.2));
    expect(() => studentQuantile(0.975, 3.5)).toThrow(
      "3.5 degrees of freedom: give a whole number",
    );
    expect(() => studentChance(1, 0)).toThrow("0 degrees of freedom");
  });
});

describe("the coverage factor", () => {
  it("cuts degrees of freedom down to a whole number, but not for a rounding error", () => {
    expect(coverage(16.75)).toBe(coverage(16));
    expect(coverage(4 - 1e-12)).toBe(coverage(4));
  });

  it("refuses a chance that is none", () => {
    expect(() => coverage(5, 1)).toThrow("chance 1: give one between 0 and 1");
    expect(() => coverage(5, 95)).toThrow("chance 95");
  });
});
