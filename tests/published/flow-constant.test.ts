import { describe, expect, it } from "vitest";
import { oneValue } from "../../src/algebra";
import { constantIp, constantSi, flowFromPressure } from "../../src/formulas";
import { usualConstant } from "../../src/job";
import { cellOf } from "../functions/call";

// The inch (0.0254 m) and the foot (0.3048 m) are exact by the international yard and pound
// agreement of 1959; everything below is arithmetic on them.
const squareInch = 0.0254 ** 2;
const cubicFootAMinute = 0.3048 ** 3 / 60;

describe("the flow constant from a discharge coefficient, by the orifice equation Q = C·A·√(2·ΔP/ρ)", () => {
  it("is that of the equation in m², Pa and m³/s, carried over by the exact inch and foot", () => {
    for (const [C, rho] of [
      [0.6, 1.2],
      [0.61, 1.204],
      [1, 1.0],
    ] as const) {
      const expected = (C * Math.sqrt(2 / rho) * squareInch) / cubicFootAMinute;
      // The text holds the same exact factors; only the order of the operations differs.
      expect(Math.abs(oneValue(constantIp, { C, rho }) - expected)).toBeLessThan(1e-14);
      expect(oneValue(constantSi, { C, rho })).toBeCloseTo(C * Math.sqrt(2 / rho) * 1e-4 * 1e3, 14);
    }
  });

  it("is 1.07 for C = 0.6063 at 1.2 kg/m³: neither 0.60 nor 0.61", () => {
    const C = (1.07 * cubicFootAMinute) / squareInch / Math.sqrt(2 / 1.2);
    expect(C).toBeCloseTo(0.6063, 5); // stated to four decimals
    expect(oneValue(constantIp, { C: 0.6063, rho: 1.2 })).toBeCloseTo(1.07, 4);
    expect(oneValue(constantIp, { C: 0.6, rho: 1.2 })).toBeCloseTo(1.0589, 4);
    expect(oneValue(constantIp, { C: 0.61, rho: 1.2 })).toBeCloseTo(1.0765, 4);
  });

  // Recomputation: the same arithmetic done elsewhere, six decimals (five in the last columns).
  // Densities: EN and ISO standard air; 0.075 lb/ft³; dry at 20 °C and 101 325 Pa with the
  // ASHRAE gas constant; the standard atmosphere at sea level; dry at 0 °C.
  it.each([
    [1.2, 1.764811, 0.6063, 1.05889, 1.07653, 1.09418, 1.14713],
    [0.075 * (0.45359237 / 0.3048 ** 3), 1.763793, 0.60665, 1.05828, 1.07591, 1.09355, 1.14647],
    [101325 / (287.042 * 293.15), 1.761766, 0.60735, 1.05706, 1.07468, 1.09229, 1.14515],
    [1.225, 1.74671, 0.61258, 1.04803, 1.06549, 1.08296, 1.13536],
    [1.2929, 1.700225, 0.62933, 1.02013, 1.03714, 1.05414, 1.10515],
  ])("at %d kg/m³ agrees with a recomputed table of constants", (rho, one, implied, ...others) => {
    const constantOf = (C: number) => oneValue(constantIp, { C, rho });
    // Half a unit of the last printed digit, and a little for a tie in the printed number; the
    // implied coefficient's half unit (0.5e-5) counts with the constant at C = 1, about 1.8.
    expect(Math.abs(constantOf(1) - one)).toBeLessThanOrEqual(0.51e-6);
    expect(Math.abs(constantOf(implied) - 1.07)).toBeLessThanOrEqual(0.51e-5 * one);
    [0.6, 0.61, 0.62, 0.65].forEach((C, i) => {
      expect(Math.abs(constantOf(C) - (others[i] as number))).toBeLessThanOrEqual(0.51e-5);
    });
  });
});

describe("the SI twin of 1.07", () => {
  it("is 0.0782726 L/s for each cm² and √Pa, by the exact inch and foot", () => {
    const twin = (1.07 * cubicFootAMinute * 1e3) / (squareInch * 1e4);
    expect(twin).toBeCloseTo(0.0782726, 7);
    expect(Math.abs(usualConstant.si - twin)).toBeLessThan(1e-16);
    expect(usualConstant.ip).toBe(1.07);
  });

  it("makes FLOW give one flow in both systems", () => {
    const cfm = cellOf("FLOW", 24, 4) as number;
    const litres = cellOf("FLOW", 24 * 6.4516, 4, null, "si") as number;
    expect(litres / (cubicFootAMinute * 1e3)).toBeCloseTo(cfm, 10);
  });
});

describe("handbook coefficients (Encyclopaedia Britannica, 11th ed., vol. 14, Hydraulics)", () => {
  const flow = (C: number) =>
    oneValue(flowFromPressure, { K: oneValue(constantIp, { C, rho: 1.2 }), A: 24, P: 4 });
  const usual = cellOf("FLOW", 24, 4) as number;

  it("put a sharp hole, 0.62, within 3 % of 1.07", () => {
    // The handbook's own spread for sharp holes is .603 to .620 (its p. 55): 3 %.
    expect(Math.abs(flow(0.62) / usual - 1)).toBeLessThan(0.03);
    expect(flow(0.62)).toBeGreaterThan(usual);
  });

  it("put a circular hole of 0.196 in² at a head of 20 ft, .603, within 1 % of 1.07", () => {
    expect(Math.abs(flow(0.603) / usual - 1)).toBeLessThan(0.01);
  });

  it("put a cylindrical mouthpiece, 0.82, about one third above 1.07", () => {
    // "About one third more than a plain hole" (p. 95): 30 to 40 %.
    expect(flow(0.82) / usual).toBeGreaterThan(1.3);
    expect(flow(0.82) / usual).toBeLessThan(1.4);
  });

  it("put a bellmouth, 0.97, more than half above 1.07: the constant is not for rounded edges", () => {
    expect(flow(0.97) / usual).toBeGreaterThan(1.5);
  });
});
