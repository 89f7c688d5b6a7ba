import { evaluate } from "mathjs";
import { describe, expect, it } from "vitest";
import { columns, oneValue } from "../../src/algebra";
import { type Formula, flowFromPressure, formulas } from "../../src/formulas";
import { asColumns, randomPoints } from "./points";

/** The scalar evaluation of a general mathematics library, steps in their order. */
function independently(formula: Formula, point: Record<string, number>): number {
  const scope = new Map<string, number>(Object.entries(point));
  for (const step of formula.steps ?? []) scope.set(step.name, evaluate(step.text, scope));
  return Number(evaluate(formula.text, scope));
}

describe("the columns reader against mathjs' own scalar evaluation", () => {
  // Both do the same operations in double precision; mathjs may round a power or a product in
  // another order by an ulp (2e-16), and the longest text has some fifty operations.
  it.each(formulas.map((formula) => [formula.id, formula] as const))(
    "agrees for %s",
    (_, formula) => {
      const points = randomPoints(formula, 200);
      const values = columns(formula, asColumns(formula, points), points.length);
      points.forEach((point, i) => {
        const expected = independently(formula, point);
        expect(Number.isFinite(expected)).toBe(true);
        expect(Math.abs((values[i] as number) - expected)).toBeLessThanOrEqual(
          1e-12 * Math.abs(expected),
        );
      });
    },
  );
});

describe("the columns reader", () => {
  const given = { K: 1.07, A: 24, P: 4 };

  it("takes one number for all rows beside a column", () => {
    const P = Float64Array.of(1, 4, 9);
    expect([...columns(flowFromPressure, { K: 1, A: 2, P }, 3)]).toEqual([2, 4, 6]);
  });

  it("gives every row of a long column the value it gives that row alone", () => {
    const P = Float64Array.from({ length: 2500 }, (_, i) => i / 300);
    const whole = columns(flowFromPressure, { ...given, P }, P.length);
    for (const i of [0, 1, 1023, 1024, 1025, 2047, 2048, 2499])
      expect(whole[i]).toBe(oneValue(flowFromPressure, { ...given, P: P[i] as number }));
    expect(whole.length).toBe(2500);
  });

  it("fills every row where all inputs are single numbers", () => {
    const values = columns(flowFromPressure, given, 3000);
    expect(values.every((value) => value === 1.07 * 24 * 2)).toBe(true);
  });

  it("gives no rows for no rows", () => {
    expect(columns(flowFromPressure, given, 0).length).toBe(0);
  });

  it("names the symbol that has no input", () => {
    expect(() => columns(flowFromPressure, { K: 1, A: 1 }, 1)).toThrow("no input for the symbol P");
  });

  it("names the input of another length", () => {
    const P = Float64Array.of(1, 2);
    expect(() => columns(flowFromPressure, { ...given, P }, 3)).toThrow(
      "input P has 2 rows where 3 are needed",
    );
  });

  it("computes a step once and uses it in several places, block after block", () => {
    const formula: Formula = {
      ...flowFromPressure,
      steps: [{ name: "s", shown: "s", meaning: "", unit: "1", text: "sqrt(P)" }],
      text: "K * A * s + s * s - P",
    };
    const P = Float64Array.from({ length: 1500 }, (_, i) => (i % 40) ** 2);
    const values = columns(formula, { K: 2, A: 3, P }, P.length);
    values.forEach((value, i) => {
      expect(value).toBe(6 * (i % 40));
    });
  });

  it("takes the branch of a choice row by row", () => {
    const formula: Formula = { ...flowFromPressure, text: "P > 4 ? K : P < 2 ? A : -P" };
    const P = Float64Array.of(5, 4, 2, 1);
    expect([...columns(formula, { K: 10, A: 20, P }, 4)]).toEqual([10, -4, -2, 20]);
  });

  it("reads every operator and function as written", () => {
    const one = (text: string, x: number) => oneValue({ ...flowFromPressure, text }, { x });
    expect(one("-x ^ 2", 3)).toBe(-9);
    expect(one("2 ^ x ^ 2", 3)).toBe(512);
    expect(one("10 - x - 2", 3)).toBe(5);
    expect(one("12 / x / 2", 3)).toBe(2);
    expect(one("abs(-x)", 3)).toBe(3);
    expect(one("floor(-x / 2)", 3)).toBe(-2);
    expect(one("log(exp(x))", 3)).toBeCloseTo(3, 14);
    expect(one("x <= 3 ? 1 : 0", 3)).toBe(1);
    expect(one("x < 3 ? 1 : 0", 3)).toBe(0);
    expect(one("x >= 3 ? 1 : 0", 3)).toBe(1);
    expect(one("x > 3 ? 1 : 0", 3)).toBe(0);
    expect(one("2 * pi", 3)).toBe(2 * Math.PI);
  });
});
