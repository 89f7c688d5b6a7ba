import { describe, expect, it } from "vitest";
import { coverage, halfWidth, propagate } from "../../src/spread";
import { formulaOf } from "../spread/formula";

/**
 * JCGM 100:2008 (GUM), H.1, calibration of an end gauge (two sources: an open uncertainty
 * library's example, and recomputed). Lengths in nm, temperatures in °C. The comparison d has three
 * uncertainties of its own; δα and δθ are 0 but uncertain; θ̄ and Δ together are θ.
 */
const length = formulaOf("end-gauge", "ls + d - ls * (da * (tm + td) + as * dt)", [
  "ls",
  "d",
  "as",
  "da",
  "dt",
  "tm",
  "td",
]);
const budget = propagate(length, {
  ls: { value: 50_000_623, spreads: [{ label: "standard", u: 25, dof: 18 }] },
  d: {
    value: 215,
    spreads: [
      { label: "repeats", u: 5.8, dof: 24 },
      { label: "comparator, random", u: 3.9, dof: 5 },
      { label: "comparator, systematic", u: 6.7, dof: 8 },
    ],
  },
  as: { value: 11.5e-6, spreads: [{ label: "expansion", u: halfWidth(2e-6) }] },
  da: { value: 0, spreads: [{ label: "difference of expansion", u: halfWidth(1e-6), dof: 50 }] },
  dt: { value: 0, spreads: [{ label: "difference of temperature", u: halfWidth(0.05), dof: 2 }] },
  tm: { value: -0.1, spreads: [{ label: "mean temperature", u: 0.2 }] },
  // An arcsine distribution of half width 0.5 has the standard deviation 0.5/√2.
  td: { value: 0, spreads: [{ label: "cycle of temperature", u: 0.5 / Math.SQRT2 }] },
});

describe("GUM H.1, the end gauge", () => {
  it("is 50 000 838 nm long", () => {
    expect(budget.value).toBe(50_000_838);
  });

  it("has the published contributions to first order", () => {
    const byLabel = Object.fromEntries(budget.lines.map((line) => [line.label, line.contribution]));
    expect(byLabel).toEqual({
      standard: 25,
      repeats: 5.8,
      "comparator, random": 3.9,
      "comparator, systematic": 6.7,
      expansion: 0,
      "difference of expansion": expect.closeTo(2.88679, 5),
      "difference of temperature": expect.closeTo(16.599, 3),
      "mean temperature": 0,
      "cycle of temperature": 0,
    });
  });

  it("has a combined standard uncertainty of 31.66 nm, which the guide prints as 32", () => {
    expect(budget.u).toBeCloseTo(31.66, 2);
    // u(d), three contributions of one input: 9.6819.
    const ofD = budget.lines
      .filter(({ symbol }) => symbol === "d")
      .map((line) => line.contribution);
    expect(Math.hypot(...ofD)).toBeCloseTo(9.6819, 4);
  });

  it("has 16.75 effective degrees of freedom, cut to 16, so k = 2.92 and U = 93 nm at 99 %", () => {
    // The guide first draws d together: 25.45 degrees of freedom, to which these three lines come.
    expect(budget.dof).toBeCloseTo(16.75, 2);
    // k and U99 from memory, as printed.
    expect(coverage(budget.dof, 0.99)).toBeCloseTo(2.92, 2);
    expect(Math.round(coverage(budget.dof, 0.99) * 32)).toBe(93);
  });
});
