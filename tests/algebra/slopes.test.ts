import { derivative } from "mathjs";
import { describe, expect, it } from "vitest";
import { oneValue, slopes } from "../../src/algebra";
import { type Formula, flowFromPressure, formulas } from "../../src/formulas";
import { exampleOf } from "./examples";
import { asColumns, randomPoints } from "./points";

/**
 * Step of the central difference: about the cube root of the double precision (6e-6) of the
 * value's size, where truncation (∝ h²) and rounding (∝ 1/h) are both smallest.
 */
const relativeStep = 6e-6;

interface Difference {
  readonly value: number;
  /** What rounding alone can do to it: some ulps of the formula's value over the step. */
  readonly noise: number;
  /** True where the two sides lie on different steps of a floor or branches of a choice. */
  readonly astride: boolean;
}

function centralDifference(
  formula: Formula,
  point: Record<string, number>,
  name: string,
  range: readonly [number, number],
): Difference {
  const x = point[name] as number;
  const h = relativeStep * Math.max(Math.abs(x), 1e-3 * (range[1] - range[0]));
  const at = (value: number) => oneValue(formula, { ...point, [name]: value });
  const [low, high] = [at(x - h), at(x + h)];
  const here = Math.max(Math.abs(low), Math.abs(high));
  // A formula that jumps changes by whole numbers across a step, far more than a slope times h.
  const jumps = /floor|\?/.test(formula.text);
  const [nearLow, nearHigh] = [at(x - h / 64), at(x + h / 64)];
  const value = (high - low) / (2 * h);
  const inner = (nearHigh - nearLow) / (h / 32);
  const astride = jumps && Math.abs(value - inner) > 1e-3 * (Math.abs(value) + Math.abs(inner));
  return { value, noise: (1e-14 * here) / h, astride };
}

describe.each(formulas.map((formula) => [formula.id, formula] as const))(
  "the slopes reader for %s",
  (_, formula) => {
    const points = randomPoints(formula, 60);
    const inputs = asColumns(formula, points);

    it.each(formula.symbols.map(({ name, valid }) => [name, valid] as const))(
      "agrees with central differences by %s",
      (name, range) => {
        const values = slopes(formula, name, inputs, points.length);
        let compared = 0;
        points.forEach((point, i) => {
          const difference = centralDifference(formula, point, name, range);
          if (difference.astride) return;
          compared++;
          // Truncation is h²·f‴/6: with (6e-6)² and the sharpest curve here (an exponential of
          // some 20 times the relative change, cubed) it stays below 1e-7 of the slope.
          const tolerance = 1e-7 * Math.abs(difference.value) + difference.noise;
          expect(Math.abs((values[i] as number) - difference.value)).toBeLessThanOrEqual(tolerance);
        });
        expect(compared).toBeGreaterThan(0.9 * points.length);
      },
    );
  },
);

describe("the slopes reader against mathjs' own derivatives", () => {
  const single = formulas.filter(({ steps, text }) => !steps && !/[?<>]|floor/.test(text));

  it.each(single.map((formula) => [formula.id, formula] as const))(
    "agrees for %s",
    (_, formula) => {
      for (const { name } of formula.symbols) {
        const expected: number = derivative(formula.text, name).evaluate(exampleOf(formula).given);
        const [slope] = slopes(formula, name, exampleOf(formula).given, 1);
        // The same operations in another order: a few units in the last place of each.
        expect(Math.abs(slope! - expected)).toBeLessThanOrEqual(1e-13 * Math.abs(expected));
      }
    },
  );
});

describe("the slopes reader", () => {
  const given = { K: 1.07, A: 24, P: 4 };

  it("gives the slopes of the flow formula as worked by hand", () => {
    expect(slopes(flowFromPressure, "K", given, 1)[0]).toBeCloseTo(24 * 2, 12);
    expect(slopes(flowFromPressure, "A", given, 1)[0]).toBeCloseTo(1.07 * 2, 12);
    expect(slopes(flowFromPressure, "P", given, 1)[0]).toBeCloseTo((1.07 * 24) / (2 * 2), 12);
  });

  it("differentiates each branch of a choice", () => {
    const formula: Formula = { ...flowFromPressure, text: "P > 4 ? P ^ 2 : P > 2 ? 3 * P : A" };
    const P = Float64Array.of(5, 3, 1);
    expect([...slopes(formula, "P", { A: 7, P }, 3)]).toEqual([10, 3, 0]);
  });

  it("gives a rounded formula slope 0", () => {
    const formula: Formula = { ...flowFromPressure, text: "floor(A * P)" };
    expect(slopes(formula, "P", given, 1)[0]).toBe(0);
  });

  it("differentiates through steps", () => {
    const formula: Formula = {
      ...flowFromPressure,
      steps: [
        { name: "u", shown: "u", meaning: "", unit: "1", text: "P ^ 2" },
        { name: "v", shown: "v", meaning: "", unit: "1", text: "3 * u" },
      ],
      text: "v + u",
    };
    expect(slopes(formula, "P", given, 1)[0]).toBeCloseTo(32, 12);
  });

  it("gives 0 for a symbol the formula does not use", () => {
    expect(slopes({ ...flowFromPressure, text: "K * A" }, "P", given, 1)[0]).toBe(0);
  });
});
