import { describe, expect, it } from "vitest";
import { oneValue } from "../../src/algebra";
import {
  approachFactor,
  constantSi,
  flowFromPressure,
  plenumCoefficient,
} from "../../src/formulas";
import { cellOf } from "../functions/call";

describe("the velocity-of-approach factor 1/√(1 − β⁴)", () => {
  // Recomputation, five decimals.
  it.each([
    [0.1, 1.00005],
    [0.2, 1.0008],
    [0.3, 1.00407],
    [0.4, 1.01305],
    [0.5, 1.0328],
    [0.6, 1.07187],
    [0.7, 1.14715],
  ])("at β = %d is %d", (beta, expected) => {
    expect(Math.abs(oneValue(approachFactor, { beta }) - expected)).toBeLessThanOrEqual(0.51e-5);
  });
});

describe("a box face as a plenum: the same clause in the limit β → 0", () => {
  // Recomputation, air of 1.204 kg/m³ and ν 1.51e-5 m²/s: diameter in, Pa, Re, C, cfm, and what
  // 1.07 makes of it in cfm and per cent.
  it.each([
    [1, 1, 1404, 0.6478, 0.896, 0.84, -6.3],
    [1, 4, 2726, 0.6286, 1.74, 1.681, -3.4],
    [1, 8, 3813, 0.6218, 2.434, 2.377, -2.3],
    [2, 1, 2726, 0.6286, 3.479, 3.362, -3.4],
    [2, 4, 5345, 0.6164, 6.824, 6.723, -1.5],
    [2, 8, 7507, 0.6121, 9.583, 9.508, -0.8],
    [3, 1, 4038, 0.6208, 7.731, 7.563, -2.2],
    [3, 4, 7954, 0.6115, 15.23, 15.127, -0.7],
    [3, 8, 11188, 0.6082, 21.424, 21.392, -0.1],
    [4, 1, 5345, 0.6164, 13.647, 13.446, -1.5],
    [4, 4, 10557, 0.6087, 26.954, 26.892, -0.2],
    [4, 8, 14864, 0.606, 37.95, 38.031, 0.2],
    [6, 1, 7954, 0.6115, 30.46, 30.254, -0.7],
    [6, 4, 15756, 0.6056, 60.339, 60.507, 0.3],
    [6, 8, 22207, 0.6036, 85.046, 85.57, 0.6],
  ])("a %d in hole at %d Pa", (inches, P, Re, coefficient, cfm, usual, error) => {
    const C = oneValue(plenumCoefficient, { Re });
    expect(Math.abs(C - coefficient)).toBeLessThanOrEqual(0.51e-4);
    const rho = 1.204;
    const d = inches * 0.0254;
    const K = oneValue(constantSi, { C, rho });
    const litres = oneValue(flowFromPressure, { K, A: (Math.PI / 4) * (d * 100) ** 2, P });
    // The Reynolds number of that flow is the one the row states, to its whole number.
    const reynolds = (4 * litres * 1e-3) / (Math.PI * d * 1.51e-5);
    expect(Math.abs(reynolds - Re)).toBeLessThanOrEqual(1);
    const flow = litres / 0.4719474432;
    // The row's Re is rounded to a whole number, which moves the smallest flows by 1e-5 of them.
    expect(Math.abs(flow - cfm)).toBeLessThanOrEqual(0.00051 + 2e-5 * cfm);
    const read = cellOf("FLOW", cellOf("ROUND_AREA", inches), P) as number;
    expect(Math.abs(read - usual)).toBeLessThanOrEqual(0.00051);
    expect(Math.abs((read / flow - 1) * 100 - error)).toBeLessThanOrEqual(0.051);
  });
});
