import { describe, expect, it } from "vitest";
import { flowFromPressure } from "../../src/formulas";
import { coverage, propagate } from "../../src/spread";
import { formulaOf } from "./formula";

const sum = formulaOf("sum", "a + b", ["a", "b"]);
const difference = formulaOf("difference", "a - b", ["a", "b"]);
const of = (value: number, u: number, label: string, dof?: number) => ({
  value,
  spreads: [dof === undefined ? { label, u } : { label, u, dof }],
});

describe("the propagation of spreads", () => {
  it("adds independent contributions in squares, with the slope of each input", () => {
    const budget = propagate(flowFromPressure, {
      K: of(1.07, 0.02, "constant"),
      A: of(24, 0.1, "area"),
      P: of(4, 0.2, "manometer"),
    });
    // Worked by hand: slopes 48, 2.14 and 6.42.
    expect(budget.value).toBeCloseTo(51.36, 12);
    expect(budget.lines.map(({ contribution }) => contribution)).toEqual([
      expect.closeTo(0.96, 12),
      expect.closeTo(0.214, 12),
      expect.closeTo(1.284, 12),
    ]);
    expect(budget.u).toBeCloseTo(Math.hypot(0.96, 0.214, 1.284), 12);
    expect(budget.lines.map(({ shown, unit }) => [shown, unit])[2]).toEqual(["ΔP", "Pa"]);
    expect(budget.lines.reduce((total, { share }) => total + share, 0)).toBeCloseTo(1, 12);
  });

  it("keeps several spreads of one input as lines of their own with one slope", () => {
    const both = propagate(flowFromPressure, {
      K: { value: 1.07 },
      A: { value: 24 },
      P: {
        value: 4,
        spreads: [
          { label: "limit", u: 0.3 },
          { label: "display", u: 0.4 },
        ],
      },
    });
    const one = propagate(flowFromPressure, {
      K: { value: 1.07 },
      A: { value: 24 },
      P: of(4, 0.5, "both"),
    });
    expect(both.lines.map(({ label, slope }) => [label, slope])).toEqual([
      ["limit", expect.closeTo(6.42, 12)],
      ["display", expect.closeTo(6.42, 12)],
    ]);
    expect(both.u).toBeCloseTo(one.u, 12);
  });

  it("takes an input without spreads as exact", () => {
    const budget = propagate(sum, { a: { value: 1 }, b: { value: 2 } });
    expect(budget).toMatchObject({ value: 3, u: 0, dof: Infinity, expanded: 0, lines: [] });
  });

  it("lets full correlation add in a sum and cancel in a difference", () => {
    const inputs = { a: of(5, 0.3, "a"), b: of(2, 0.4, "b") };
    const tied = [{ between: ["a", "b"], r: 1 }] as const;
    expect(propagate(sum, inputs, tied).u).toBeCloseTo(0.7, 12);
    expect(propagate(difference, inputs, tied).u).toBeCloseTo(0.1, 12);
    expect(propagate(sum, inputs).u).toBeCloseTo(0.5, 12);
    const equal = { a: of(5, 0.3, "a"), b: of(2, 0.3, "b") };
    expect(propagate(difference, equal, tied).u).toBe(0);
  });

  it("gives shares that add up to 1 under correlation too, some of them below 0", () => {
    const inputs = { a: of(5, 0.3, "a"), b: of(2, 0.4, "b") };
    const { lines } = propagate(difference, inputs, [{ between: ["a", "b"], r: 0.9 }]);
    expect(lines.reduce((total, { share }) => total + share, 0)).toBeCloseTo(1, 12);
    expect(Math.min(...lines.map(({ share }) => share))).toBeLessThan(0);
  });
});

describe("effective degrees of freedom", () => {
  it("are those of Welch and Satterthwaite for independent lines", () => {
    const { dof, k } = propagate(sum, { a: of(0, 3, "a", 5), b: of(0, 4, "b", 8) });
    expect(dof).toBeCloseTo(5 ** 4 / (3 ** 4 / 5 + 4 ** 4 / 8), 10);
    expect(k).toBe(coverage(12));
  });

  it("are the line's own where there is one, and infinite where all are", () => {
    expect(propagate(sum, { a: of(0, 3, "a", 4), b: { value: 0 } }).dof).toBeCloseTo(4, 12);
    expect(propagate(sum, { a: of(0, 3, "a"), b: of(0, 1, "b") }).dof).toBe(Infinity);
  });

  it("are those of the common set of readings where lines are correlated", () => {
    const inputs = { a: of(0, 3, "a", 4), b: of(0, 4, "b", 4) };
    expect(propagate(sum, inputs, [{ between: ["a", "b"], r: 0.3 }]).dof).toBeCloseTo(4, 12);
  });

  it("take the least of correlated lines, and join chains of them", () => {
    const three = formulaOf("three", "a + b + c", ["a", "b", "c"]);
    const inputs = { a: of(0, 1, "a", 3), b: of(0, 1, "b", 9), c: of(0, 1, "c", 20) };
    const chain = [
      { between: ["a", "b"], r: 0.5 },
      { between: ["b", "c"], r: 0.5 },
    ] as const;
    expect(propagate(three, inputs, chain).dof).toBeCloseTo(3, 12);
    const { dof } = propagate(three, inputs, chain.slice(0, 1));
    expect(dof).toBeCloseTo(4 ** 2 / (3 ** 2 / 3 + 1 / 20), 10);
  });
});

describe("what cannot be meant", () => {
  const inputs = { a: of(1, 0.3, "a"), b: of(2, 0.4, "b") };
  it.each([
    [() => propagate(sum, { a: of(1, 1, "a") }), "no input for the symbol b of sum"],
    [() => propagate(sum, { ...inputs, a: of(1, -1, "tape") }), "tape: a spread of -1 is below 0"],
    [() => propagate(sum, { ...inputs, a: of(1, 1, "tape", 0.5) }), "tape: 0.5 degrees of freedom"],
    [
      () => propagate(sum, inputs, [{ between: ["a", "b"], r: 1.1 }]),
      "correlation 1.1 between a and b",
    ],
    [() => propagate(sum, inputs, [{ between: ["a", "a"], r: 1 }]), "between two spreads"],
    [() => propagate(sum, inputs, [{ between: ["a", "x"], r: 1 }]), 'labelled "x": there are a, b'],
    [
      () => propagate(sum, { a: of(1, 1, "a"), b: of(1, 1, "a") }, [{ between: ["a", "a"], r: 1 }]),
      'two spreads are labelled "a"',
    ],
    [
      () =>
        propagate(
          formulaOf("three", "a + b + c", ["a", "b", "c"]),
          { a: of(1, 1, "a"), b: of(1, 1, "b"), c: of(1, 1, "c") },
          (["ab", "bc", "ac"] as const).map((pair) => ({
            between: [pair.charAt(0), pair.charAt(1)] as const,
            r: -1,
          })),
        ),
      "the correlations contradict one another",
    ],
  ])("is refused with a message that says which: %#", (act, message) => {
    expect(act).toThrow(message);
  });
});
