import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { flowFromPressure } from "../../src/formulas";
import { flowBudget, verdictColumn } from "../../src/job";
import { acceptFrom, chanceMet, coverage, normalQuantile, propagate } from "../../src/spread";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
/** Not so small that its square is no number any more. */
const spreadOf = fc.oneof(fc.constant(0), between(1e-9, 2));

describe("properties of spreads", () => {
  it("a result's spread never shrinks as one input's grows", () => {
    const inputs = fc.tuple(spreadOf, spreadOf, spreadOf);
    fc.assert(
      fc.property(inputs, fc.nat(2), between(0, 2), between(0.5, 10), (us, which, more, P) => {
        const u = (spreads: readonly number[]) =>
          propagate(flowFromPressure, {
            K: { value: 1.07, spreads: [{ label: "K", u: spreads[0] as number }] },
            A: { value: 24, spreads: [{ label: "A", u: spreads[1] as number }] },
            P: { value: P, spreads: [{ label: "P", u: spreads[2] as number }] },
          }).u;
        const grown = us.map((each, i) => (i === which ? each + more : each));
        // A hair for the rounding of one root.
        expect(u(grown)).toBeGreaterThanOrEqual(u(us) * (1 - 1e-14));
      }),
      { seed: 41, numRuns: 300 },
    );
  });

  it("is at least the largest contribution and at most their sum", () => {
    fc.assert(
      fc.property(spreadOf, spreadOf, spreadOf, (a, b, c) => {
        const { u, lines } = propagate(flowFromPressure, {
          K: { value: 1.07, spreads: [{ label: "K", u: a }] },
          A: { value: 24, spreads: [{ label: "A", u: b }] },
          P: { value: 4, spreads: [{ label: "P", u: c }] },
        });
        const parts = lines.map(({ contribution }) => contribution);
        expect(u).toBeGreaterThanOrEqual(Math.max(...parts) * (1 - 1e-14));
        expect(u).toBeLessThanOrEqual(parts.reduce((x, y) => x + y, 0) * (1 + 1e-14));
      }),
      { seed: 42, numRuns: 200 },
    );
  });

  it("effective degrees of freedom lie between the least line's and the sum of all", () => {
    const line = fc.record({ u: between(0.01, 2), dof: fc.integer({ min: 1, max: 60 }) });
    fc.assert(
      fc.property(fc.array(line, { minLength: 1, maxLength: 6 }), (lines) => {
        const spreads = lines.map((each, i) => ({ ...each, label: `line ${i}` }));
        const { dof } = propagate(flowFromPressure, {
          K: { value: 1.07 },
          A: { value: 24 },
          P: { value: 4, spreads },
        });
        const dofs = lines.map((each) => each.dof);
        expect(dof).toBeGreaterThanOrEqual(Math.min(...dofs) * (1 - 1e-12));
        expect(dof).toBeLessThanOrEqual(dofs.reduce((a, b) => a + b, 0) * (1 + 1e-12));
      }),
      { seed: 43, numRuns: 300 },
    );
  });

  it("a coverage factor is the normal one or more, and falls as degrees of freedom grow", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 3000 }), between(0.5, 0.999), (dof, chance) => {
        const k = coverage(dof, chance);
        expect(k).toBeGreaterThan(normalQuantile((1 + chance) / 2));
        expect(coverage(dof + 1, chance)).toBeLessThan(k);
      }),
      { seed: 44, numRuns: 300 },
    );
    expect(coverage(Infinity)).toBeCloseTo(1.96, 4);
  });

  it("a box's spread in percent falls as its pressure rises, all else alike", () => {
    fc.assert(
      fc.property(between(0.5, 7), between(1.01, 3), (P, more) => {
        const relative = (pressure: number) => {
          const given = { area: 24, areaLimit: 0.2, constant: 1.07, constantSpread: 2 };
          const meter = { meterPercent: 1, meterFloor: 0.25, resolution: 0.1, zeroLimit: 0.1 };
          const { u, value } = flowBudget({ pressure, ...given, ...meter });
          return u / value;
        };
        expect(relative(P * more)).toBeLessThan(relative(P));
      }),
      { seed: 45, numRuns: 100 },
    );
  });

  it("a guarded verdict only ever moves from short over too close to call to meets", () => {
    const order = ["short", "too close to call", "meets"];
    const flows = fc.array(between(0, 500), { minLength: 2, maxLength: 20 });
    fc.assert(
      fc.property(
        flows,
        between(10, 400),
        between(0, 20),
        between(0.5, 0.999),
        (any, R, u, chance) => {
          const sorted = Float64Array.from(any).sort();
          const guard = { spread: u, chance };
          const verdicts = verdictColumn(sorted, R, sorted.length, undefined, guard);
          const ranks = verdicts.map((verdict) => order.indexOf(verdict as string));
          expect(Math.min(...ranks)).toBeGreaterThanOrEqual(0);
          expect(ranks).toEqual([...ranks].sort());
        },
      ),
      { seed: 46, numRuns: 300 },
    );
  });

  it("a flow at the acceptance limit meets, and one just below does not", () => {
    fc.assert(
      fc.property(between(10, 400), between(0.1, 20), between(0.51, 0.999), (R, u, chance) => {
        const limit = acceptFrom(R, u, chance);
        const at = Float64Array.of(limit, limit - 1e-6 * u);
        expect(verdictColumn(at, R, 2, undefined, { spread: u, chance })).toEqual([
          "meets",
          expect.not.stringMatching(/^meets$/),
        ]);
        expect(chanceMet(limit + u, u, R)).toBeGreaterThan(chance);
      }),
      { seed: 47, numRuns: 200 },
    );
  });
});
