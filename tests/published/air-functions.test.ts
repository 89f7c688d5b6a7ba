import { unit } from "mathjs";
import psychrolib from "psychrolib";
import { describe, expect, it } from "vitest";
import { oneValue } from "../../src/algebra";
import { densityOverIce, type Formula, pascalsFromMercury } from "../../src/formulas";
import { cellOf } from "../functions/call";

psychrolib.SetUnitSystem(psychrolib.SI);

const density = (...args: readonly unknown[]) => cellOf("AIR_DENSITY", ...args) as number;
const factor = (...args: readonly unknown[]) => cellOf("AIR_FACTOR", ...args) as number;
const step = (formula: Formula, name: string, given: Readonly<Record<string, number>>) =>
  oneValue({ ...formula, text: name }, given);

/** The package's density, kg/m³, from °C, 0 to 1 and Pa. */
function byPsychrolib(t: number, h: number, p: number): number {
  return psychrolib.GetMoistAirDensity(t, psychrolib.GetHumRatioFromRelHum(t, h, p), p);
}

describe("AIR_DENSITY against the package psychrolib (ASHRAE Handbook of Fundamentals 2017, ch. 1)", () => {
  it("agrees by barometer in SI, from hard frost to heat", () => {
    for (const t of [-40, -20, -5, -0.5, 0, 0.01, 0.02, 5, 20, 35, 60])
      for (const p of [54000, 70000, 101325, 108000])
        for (const percent of [10, 50, 100]) {
          const given = density(t, percent, p / 100, null, "si");
          // The same equations in double precision. In frost the package holds the humidity ratio
          // at 1e-7 at least, which makes the driest air lighter by 6e-8 of its density.
          expect(Math.abs(given / byPsychrolib(t, percent / 100, p) - 1)).toBeLessThan(1e-7);
        }
  });

  it("agrees by elevation in SI, below and above the sea", () => {
    for (const z of [-400, 0, 200, 1524, 3000, 5000]) {
      const p = psychrolib.GetStandardAtmPressure(z);
      const given = density(20, 50, null, z, "si");
      expect(Math.abs(given / byPsychrolib(20, 0.5, p) - 1)).toBeLessThan(1e-12);
    }
  });

  it("agrees with the handbook's own inch-pound equations within 0.03 %", () => {
    psychrolib.SetUnitSystem(psychrolib.IP);
    try {
      for (const t of [-20, 20, 68, 95])
        for (const z of [-500, 0, 1000, 5280, 10000]) {
          const psi = psychrolib.GetStandardAtmPressure(z);
          const pounds = psychrolib.GetMoistAirDensity(
            t,
            psychrolib.GetHumRatioFromRelHum(t, 0.5, psi),
            psi,
          );
          const expected = (pounds * 0.45359237) / 0.3048 ** 3;
          // The inch-pound equations are fitted apart: 1e-4 of the pressure, 5e-5 of the gas
          // constant and 1e-4 of a vapour share of up to 0.05.
          expect(Math.abs(density(t, 50, null, z) / expected - 1)).toBeLessThan(3e-4);
        }
    } finally {
      psychrolib.SetUnitSystem(psychrolib.SI);
    }
  });

  // ASHRAE Handbook of Fundamentals 2017, chapter 1, table 3 (read in psychrolib's tests, which
  // hold the table to 3e-4).
  it.each([
    [-20, 103.24],
    [-5, 401.74],
  ])("has the saturation pressure over ice of the handbook's table at %d °C", (t, expected) => {
    const pws = step(densityOverIce, "pws", { t, p: 101325, h: 0.5 });
    expect(Math.abs(pws / expected - 1)).toBeLessThan(3e-4);
  });

  it("has no step where ice turns to water", () => {
    // The two equations meet at the triple point; vapour is 0.6 % of the pressure there, and a
    // fault of 1e-3 in either would show as 2e-6.
    const [below, above] = [
      density(0.0099, 100, null, 0, "si"),
      density(0.0101, 100, null, 0, "si"),
    ];
    expect(Math.abs(above / below - 1)).toBeLessThan(1e-5);
  });
});

describe("AIR_DENSITY and the barometer", () => {
  it("reads an inch of mercury as mathjs does, 25.4 mm of conventional mercury", () => {
    const read = oneValue(pascalsFromMercury, { B: 1 });
    // mathjs holds the millimetre of mercury to six digits, 133.322: half a unit is 4e-6 of it.
    expect(Math.abs(read / unit(25.4, "mmHg").toNumber("Pa") - 1)).toBeLessThan(4e-6);
    // NIST SP 811, appendix B.8 (from memory): 3386.389 Pa, seven digits.
    expect(Math.abs(read - 3386.389)).toBeLessThan(5.1e-4);
  });

  it("reads 29.92 inHg as one standard atmosphere to its four digits", () => {
    expect(Math.abs(density(68, 50, 29.92) / density(68, 50) - 1)).toBeLessThan(1e-4);
  });

  it("prefers the barometer to the elevation, as the air itself does", () => {
    expect(density(20, 50, 840, 3000, "si")).toBe(density(20, 50, 840, null, "si"));
    expect(density(20, 50, 840, 3000, "si")).not.toBe(density(20, 50, null, 3000, "si"));
  });
});

describe("AIR_FACTOR at altitude, 20 °C, dry, against 1.204 kg/m³", () => {
  // Recomputed apart from this project from the standard atmosphere and the gas law; four decimals.
  it.each([
    [200, 1.0119],
    [500, 1.0302],
    [1000, 1.0618],
    [1524, 1.0963],
    [2000, 1.129],
    [2500, 1.1648],
    [3000, 1.2022],
  ])("at %d m is %d, and the same at as many feet", (z, expected) => {
    expect(Math.abs(factor(density(20, 0, null, z, "si"), 1.204) - expected)).toBeLessThan(1.01e-4);
    const byFeet = factor(density(68, 0, null, z / 0.3048), 1.204);
    expect(Math.abs(byFeet - expected)).toBeLessThan(1.01e-4);
  });

  it("at 5280 ft is 1.102: uncorrected, a box reads 9.3 % too little", () => {
    const F = factor(density(68, 0, null, 5280), 1.204);
    expect(Math.abs(F - 1.102)).toBeLessThan(1e-3);
    expect(Math.abs((1 / F - 1) * 100 + 9.3)).toBeLessThan(0.06);
  });

  it("moves by −3.5 % at 0 °C and +1.7 % at 30 °C, as the root of the absolute temperature", () => {
    const at = (t: number) => factor(density(t, 0, null, 0, "si"), density(20, 0, null, 0, "si"));
    expect((at(0) - 1) * 100).toBeCloseTo(-3.5, 1);
    expect((at(30) - 1) * 100).toBeCloseTo(1.7, 1);
    expect(at(30)).toBeCloseTo(Math.sqrt(303.15 / 293.15), 12);
  });
});

describe("STANDARD_FLOW", () => {
  it("at 1.0678 kg/m³ is 0.8898 of the actual flow at 1.2 kg/m³: mass is kept", () => {
    expect(cellOf("STANDARD_FLOW", 100, 1.0678)).toBeCloseTo(88.983, 3);
  });
});

describe("FLOW_CONSTANT", () => {
  // Recomputed from Q = C·A·√(2ΔP/ρ) with the exact inch, foot and minute; six digits.
  it.each([
    [1, 1.2, 1.764811],
    [0.6, 1.2, 1.05889],
    [0.61, 1.2, 1.07653],
    [0.62, 1.2, 1.09418],
    [0.65, 1.2, 1.14713],
    [0.6, 1.225, 1.04803],
    [0.65, 1.2929, 1.10515],
  ])("of a coefficient of %d at %d kg/m³ is %d", (C, rho, expected) => {
    expect(Math.abs((cellOf("FLOW_CONSTANT", C, rho) as number) - expected)).toBeLessThan(5.1e-6);
  });

  it("of 0.61 at 1.2 kg/m³ in SI is 0.0787507", () => {
    expect(cellOf("FLOW_CONSTANT", 0.61, 1.2, "si")).toBeCloseTo(0.0787507, 7);
  });
});
