import { describe, expect, it } from "vitest";
import { oneValue } from "../../src/algebra";
import {
  approachFactor,
  constantSi,
  flowFromPressure,
  orificeCoefficient,
  orificeCoefficientSmallPipe,
  plenumCoefficient,
} from "../../src/formulas";
import { cellOf } from "../functions/call";

/** ISO 5167-2:2003, 5.3.2.1: the tap distances over the pipe diameter D (mm). */
const taps = {
  corner: () => ({ L1: 0, L2: 0 }),
  "D and D/2": () => ({ L1: 1, L2: 0.47 }),
  flange: (D: number) => ({ L1: 25.4 / D, L2: 25.4 / D }),
} as const;

describe("the Reader-Harris/Gallagher coefficient, ISO 5167-2:2003, 5.3.2.1", () => {
  // Two sources: printed by an open engineering library's tests and recomputed from the clause.
  const D = 73.91;
  const beta = 22.2 / D;
  const reynolds = (flow: number, viscosity: number) =>
    (4 * flow) / (Math.PI * 0.07391 * viscosity);

  it.each([
    ["corner", 0.124431876, 1.85861753095e-5, 0.6000085121444034],
    ["D and D/2", 0.124431876, 1.85861753095e-5, 0.5988219225153976],
    ["flange", 0.124431876, 1.85861753095e-5, 0.5990042535666878],
    ["flange", 0.12, 1.85e-5, 0.5990326277163659],
  ] as const)(
    "with %s taps, D 73.91 mm, d 22.2 mm, agrees to all digits",
    (kind, flow, viscosity, expected) => {
      const Re = reynolds(flow, viscosity);
      const C = oneValue(orificeCoefficient, { beta, Re, ...taps[kind](D) });
      // 1e-12: sixteen printed digits; about twenty operations lose a few ulps, 1e-16 each. The
      // viscosity of the first three rows is printed to twelve digits, which costs 1e-14 of C.
      expect(Math.abs(C - expected)).toBeLessThan(1e-12);
    },
  );

  it("has the Reynolds number that the two sources state for the case", () => {
    expect(reynolds(0.124431876, 1.85861753095e-5)).toBeCloseTo(115331.658, 3);
    expect(reynolds(0.12, 1.85e-5)).toBeCloseTo(111741.998, 3);
  });

  // Recomputation of the clause apart from this project, corner taps, five decimals.
  const reynoldsNumbers = [5e3, 1e4, 2e4, 3e4, 5e4, 1e5, 1e6, 1e8];
  it.each([
    [0.1, 0.60064, 0.599, 0.59799, 0.59759, 0.59722, 0.59689, 0.59647, 0.59637],
    [0.2, 0.60445, 0.60169, 0.59999, 0.59931, 0.59869, 0.59813, 0.59738, 0.59717],
    [0.3, 0.60946, 0.60541, 0.60291, 0.60191, 0.60098, 0.60013, 0.59894, 0.59851],
    [0.4, 0.61681, 0.61087, 0.60722, 0.60575, 0.60438, 0.60309, 0.60117, 0.60034],
    [0.5, 0.62757, 0.61858, 0.61311, 0.61091, 0.60884, 0.60687, 0.60378, 0.60221],
    [0.6, 0.64214, 0.6282, 0.61985, 0.61651, 0.61335, 0.61034, 0.60541, 0.60267],
    [0.7, 0.65882, 0.63715, 0.62438, 0.61931, 0.61453, 0.60995, 0.6023, 0.59781],
    [0.75, 0.66628, 0.63937, 0.62363, 0.61742, 0.61157, 0.60596, 0.59653, 0.5909],
  ])("agrees with a recomputed grid at β = %d to its five decimals", (ratio, ...row) => {
    row.forEach((expected, i) => {
      const Re = reynoldsNumbers[i] as number;
      const C = oneValue(orificeCoefficient, { beta: ratio, Re, L1: 0, L2: 0 });
      expect(Math.abs(C - expected)).toBeLessThanOrEqual(0.51e-5);
    });
  });

  // From memory: table A.1, corner taps, printed to four decimals.
  it.each([
    [5e3, 0.6276],
    [1e4, 0.6186],
  ])("is that of table A.1 at β = 0.5 and Re %d", (Re, expected) => {
    const C = oneValue(orificeCoefficient, { beta: 0.5, Re, L1: 0, L2: 0 });
    expect(Math.abs(C - expected)).toBeLessThanOrEqual(0.51e-4);
  });

  it("adds 0.011·(0.75 − β)·(2.8 − D/25.4 mm) in pipes below 71.12 mm, not ten times that", () => {
    // The clause's term worked by hand for D = 50.8 mm and β = 0.5: 0.011 · 0.25 · 0.8 = 0.0022.
    const given = { beta: 0.5, Re: 5e4, L1: 0, L2: 0 };
    const more =
      oneValue(orificeCoefficientSmallPipe, { ...given, D: 50.8 }) -
      oneValue(orificeCoefficient, given);
    expect(more).toBeCloseTo(0.0022, 12);
  });

  it("comes within 0.5 % of the chart of a fluid-flow handbook, Crane TP-410, problem 7.23", () => {
    // 2 in hole in 4 in schedule 40 pipe (102.26 mm), water at 60 °F, 106 gpm: C·E read as 0.625
    // from a chart, which can be read to about half a per cent. ν 1.13e-6 m²/s: 1 % of it moves
    // C by 0.0001.
    const ratio = 50.8 / 102.26;
    const flow = (106 * 231 * 0.0254 ** 3) / 60;
    const Re = (4 * flow) / (Math.PI * 0.10226 * 1.13e-6);
    const C = oneValue(orificeCoefficient, { beta: ratio, Re, L1: 1, L2: 0.47 });
    const coefficient = C * oneValue(approachFactor, { beta: ratio });
    expect(Math.abs(coefficient / 0.625 - 1)).toBeLessThan(0.005);
    expect(C).toBeCloseTo(0.6067, 3);
  });
});

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
