import psychrolib from "psychrolib";
import { describe, expect, it } from "vitest";
import { oneValue } from "../../src/algebra";
import { densityFactor, densityMoistAir } from "../../src/formulas";
import { cellOf } from "../functions/call";

psychrolib.SetUnitSystem(psychrolib.SI);

/** The metrology formula CIPM-2007 (Picard et al.), eq. 1 and appendix A; °C, Pa, kg/m³. */
function densityCipm({ t, p, h }: { t: number; p: number; h: number }) {
  const T = t + 273.15;
  const psv = Math.exp(1.2378847e-5 * T ** 2 - 1.9121316e-2 * T + 33.93711047 - 6.3431645e3 / T);
  const xv = (h * (1.00062 + 3.14e-8 * p + 5.6e-7 * t ** 2) * psv) / p;
  const first = 1.58123e-6 - 2.9331e-8 * t + 1.1043e-10 * t ** 2 + (5.707e-6 - 2.051e-8 * t) * xv;
  const second = (1.9898e-4 - 2.376e-6 * t) * xv ** 2;
  const Z = 1 - (p / T) * (first + second) + (p / T) ** 2 * (1.83e-11 - 0.765e-8 * xv ** 2);
  const dry = (p * 28.96546e-3) / (Z * 8.314472 * T);
  return { rho: dry * (1 - xv * (1 - 18.01528e-3 / 28.96546e-3)), xv, Z, psv };
}

const spread = (low: number, high: number, count: number) =>
  Array.from({ length: count }, (_, i) => low + ((high - low) * i) / (count - 1));

function grid(t: readonly [number, number]): { t: number; p: number; h: number }[] {
  return spread(...t, 8).flatMap((temperature) =>
    spread(60000, 110000, 6).flatMap((p) => spread(0, 1, 5).map((h) => ({ t: temperature, p, h }))),
  );
}

describe("the metrology formula CIPM-2007 (Picard et al., Metrologia 45 (2008) 149–155)", () => {
  // The reference of the comparison below. Recomputed from the paper's equation and constants, apart from this project; half a unit of
  // the last printed digit, and a tenth of it for a tie.
  it.each([
    [20, 101325, 0.5, 1.1993139, 0.0115893401, 0.999614768, 2339.16323],
    [20, 101325, 0, 1.2045573, 0, 0.999643139, 2339.16323],
    [20, 100000, 0.5, 1.1835566, 0.0117424123, 0.999619314, 2339.16323],
    [15, 101325, 0, 1.2255213, 0, 0.999592212, 1705.66909],
    [25, 101325, 0.6, 1.1759216, 0.0188477664, 0.999640048, 3169.75698],
  ])("at %d °C, %d Pa and humidity %d", (t, p, h, rho, xv, Z, psv) => {
    const given = densityCipm({ t, p, h });
    expect(Math.abs(given.rho - rho)).toBeLessThanOrEqual(0.6e-7);
    expect(Math.abs(given.xv - xv)).toBeLessThanOrEqual(0.6e-10);
    expect(Math.abs(given.Z - Z)).toBeLessThanOrEqual(0.6e-9);
    expect(Math.abs(given.psv - psv)).toBeLessThanOrEqual(0.6e-5);
  });
});

describe("the moist-air formula of the ASHRAE Handbook of Fundamentals 2017, chapter 1", () => {
  it("agrees with the package psychrolib, in SI, over the whole valid range", () => {
    for (const given of grid([1, 50])) {
      const { t, p, h } = given;
      const W = psychrolib.GetHumRatioFromRelHum(t, h, p);
      const expected = psychrolib.GetMoistAirDensity(t, W, p);
      // The same equations in double precision: 1e-12. Dry air: the package holds the humidity
      // ratio at 1e-7 at least, which makes the air lighter by 6e-8 of its density.
      const tolerance = h === 0 ? 1e-7 : 1e-12;
      const actual = oneValue(densityMoistAir, given);
      expect(Math.abs(actual / expected - 1)).toBeLessThanOrEqual(tolerance);
    }
  });

  it("agrees with the handbook's inch-pound equations, which are fitted apart, within 0.02 %", () => {
    psychrolib.SetUnitSystem(psychrolib.IP);
    try {
      for (const given of grid([1, 50])) {
        const fahrenheit = given.t * 1.8 + 32;
        const psi = given.p / 6894.757293168;
        const W = psychrolib.GetHumRatioFromRelHum(fahrenheit, given.h, psi);
        const pounds = psychrolib.GetMoistAirDensity(fahrenheit, W, psi);
        const expected = (pounds * 0.45359237) / 0.3048 ** 3;
        // Gas constants of 287.042 J/(kg K) and 53.350 ft lbf/(lb °R) differ by 5e-5; the two
        // saturation curves by about 1e-4 of a vapour share of up to 0.2.
        expect(Math.abs(oneValue(densityMoistAir, given) / expected - 1)).toBeLessThan(2e-4);
      }
    } finally {
      psychrolib.SetUnitSystem(psychrolib.SI);
    }
  });

  // ASHRAE Handbook of Fundamentals 2017, chapter 1, table 3 (read in psychrolib's tests, which
  // hold the table to 3e-4: the table was computed by a finer formulation than the equation).
  it.each([
    [5, 872.6],
    [25, 3169.7],
    [50, 12351.3],
  ])("has the saturation pressure of the handbook's table at %d °C", (t, expected) => {
    const pws = oneValue({ ...densityMoistAir, text: "pws" }, { t, p: 101325, h: 0.5 });
    expect(Math.abs(pws / expected - 1)).toBeLessThan(3e-4);
  });

  it("has the handbook's density at 30 °C, humidity ratio 0.02 and 95461 Pa", () => {
    // 1 kg of dry air and 0.02 kg of vapour in 0.940855… m³ (read, same tests, 3e-4). The
    // relative humidity is found back from the ratio.
    const p = 95461;
    const vapour = (p * 0.02) / (0.621945 + 0.02);
    const h = vapour / oneValue({ ...densityMoistAir, text: "pws" }, { t: 30, p, h: 0 });
    const rho = oneValue(densityMoistAir, { t: 30, p, h });
    expect(Math.abs(rho / 1.08411986348219 - 1)).toBeLessThan(3e-4);
    expect(Math.abs(1.02 / rho / 0.940855374352943 - 1)).toBeLessThan(3e-4);
  });

  it("has the handbook's 0.8443 m³ for a kg of dry air at 25 °C", () => {
    // Four printed digits; the handbook's table and equation differ by 1e-3 at most (read).
    const rho = oneValue(densityMoistAir, { t: 25, p: 101325, h: 0 });
    expect(Math.abs(rho * 0.8443 - 1)).toBeLessThan(1e-3);
  });
});

describe("the density formula against that of metrology", () => {
  it("differ by less than 0.05 % wherever both are valid", () => {
    // The ideal-gas mixture leaves out compressibility, 0.04 % at most here.
    let largest = 0;
    for (const given of grid([15, 27])) {
      const ratio = oneValue(densityMoistAir, given) / densityCipm(given).rho;
      largest = Math.max(largest, Math.abs(ratio - 1));
    }
    expect(largest).toBeLessThan(5e-4);
    expect(largest).toBeGreaterThan(1e-4);
  });
});

describe("the air factor √(ρ₀/ρ)", () => {
  // Recomputation at 20 °C dry in the standard atmosphere, ρ₀ 1.204, four decimals.
  it.each([
    [200, 1.0119],
    [500, 1.0302],
    [1000, 1.0618],
    [1524, 1.0963],
    [2000, 1.129],
    [2500, 1.1648],
    [3000, 1.2022],
  ])("at %d m is %d", (z, expected) => {
    const p = psychrolib.GetStandardAtmPressure(z);
    const rho = oneValue(densityMoistAir, { t: 20, p, h: 0 });
    expect(Math.abs(oneValue(densityFactor, { rho0: 1.204, rho }) - expected)).toBeLessThanOrEqual(
      1e-4,
    );
  });
});

// Standard atmosphere (ASHRAE Fundamentals 2017 ch. 1, eq. 3): 24.5 inHg at 5,400 ft, 29.92 at 0.
describe("a barometer brought down to sea level", () => {
  it("is told where the elevation stands beside it: 29.9 inHg at 5,400 ft is no pressure there", () => {
    expect(cellOf("AIR_DENSITY", 70, 50, 29.92, 5400)).toMatchObject({
      message: expect.stringMatching(/brought down to sea level: .* about 24\.5/),
    });
    expect(cellOf("AIR_DENSITY", 21, 50, 1013, 1650, "si")).toMatchObject({
      message: expect.stringContaining("brought down to sea level"),
    });
  });

  it("is taken as it is where weather can make it so, or where no elevation is given", () => {
    for (const [barometer, elevation] of [
      [24.5, 5400],
      [25.2, 5400],
      [30.4, 0],
      [29.2, 600],
      [29.92, null],
    ] as const)
      expect(cellOf("AIR_DENSITY", 70, 50, barometer, elevation)).toBeTypeOf("number");
  });

  it("is not the only slip of a scale: a humidity of 0.5 is asked for in percent", () => {
    expect(cellOf("AIR_DENSITY", 70, 0.5)).toMatchObject({
      message: expect.stringContaining("type percent, such as 50"),
    });
  });
});
