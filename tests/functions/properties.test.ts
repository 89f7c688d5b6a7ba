import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { call, cellOf, column } from "./call";

const size = fc.double({ min: 0.1, max: 1000, noNaN: true });
const constant = fc.double({ min: 0.05, max: 1.8, noNaN: true });
const system = fc.constantFrom("ip", "si");
const relative = (actual: unknown, expected: number) => Math.abs((actual as number) / expected - 1);

describe("properties of the worksheet functions", () => {
  it("FLOW and BOX_PRESSURE invert each other", () => {
    fc.assert(
      fc.property(size, size, fc.option(constant), system, (area, amount, K, units) => {
        // A square and a root, and three products: a few ulps of 2e-16.
        const pressure = cellOf("BOX_PRESSURE", area, amount, K, units);
        expect(relative(cellOf("FLOW", area, pressure, K, units), amount)).toBeLessThan(2e-15);
        const flow = cellOf("FLOW", area, amount, K, units);
        expect(relative(cellOf("BOX_PRESSURE", area, flow, K, units), amount)).toBeLessThan(4e-15);
      }),
      { seed: 21, numRuns: 300 },
    );
  });

  it("AREA_FOR and FLOW, and DIAMETER_FOR and ROUND_AREA, invert each other", () => {
    fc.assert(
      fc.property(size, size, system, (flow, pressure, units) => {
        const area = cellOf("AREA_FOR", flow, pressure, null, units) as number;
        expect(relative(cellOf("FLOW", area, pressure, null, units), flow)).toBeLessThan(2e-15);
        const hole = cellOf("DIAMETER_FOR", flow, pressure, null, units);
        expect(relative(cellOf("ROUND_AREA", hole), area)).toBeLessThan(2e-15);
      }),
      { seed: 22, numRuns: 200 },
    );
  });

  it("a flow is the same air in both systems", () => {
    fc.assert(
      fc.property(size, size, (area, pressure) => {
        const cfm = cellOf("FLOW", area, pressure) as number;
        const litres = cellOf("FLOW", area * 2.54 ** 2, pressure, null, "si");
        expect(relative(litres, (cfm * 0.3048 ** 3 * 1000) / 60)).toBeLessThan(2e-15);
      }),
      { seed: 23, numRuns: 200 },
    );
  });

  it("a flow grows with area, with pressure and with the constant", () => {
    fc.assert(
      fc.property(
        size,
        size,
        constant,
        fc.double({ min: 1.001, max: 2, noNaN: true }),
        (A, P, K, more) => {
          const here = cellOf("FLOW", A, P, K) as number;
          expect(cellOf("FLOW", A * more, P, K)).toBeGreaterThan(here);
          expect(cellOf("FLOW", A, P * more, K)).toBeGreaterThan(here);
          expect(cellOf("FLOW", A, P, K * more)).toBeGreaterThan(here);
        },
      ),
      { seed: 24, numRuns: 200 },
    );
  });

  it("a flow inside an opening's reach has a pressure that is in range, and outside it not", () => {
    fc.assert(
      fc.property(size, fc.double({ min: 0.1, max: 1000, noNaN: true }), (area, flow) => {
        const [low, high] = call("REACH", area)[0] as [number, number];
        // A hair at the ends: the two ways round differ by rounding.
        fc.pre(relative(flow, low) > 1e-12 && relative(flow, high) > 1e-12);
        const status = cellOf("RANGE_STATUS", cellOf("BOX_PRESSURE", area, flow));
        expect(status).toBe(flow < low ? "below" : flow > high ? "above" : "in range");
      }),
      { seed: 25, numRuns: 300 },
    );
  });

  it("a verdict never turns from meets to short as the flow grows", () => {
    const any = fc.double({ min: 0, max: 500, noNaN: true });
    fc.assert(
      fc.property(fc.array(any, { minLength: 2, maxLength: 20 }), any, (flows, required) => {
        const sorted = [...flows].sort((a, b) => a - b);
        const verdicts = call("VERDICT", column(...sorted), required).flat();
        const firstMeets = verdicts.indexOf("meets");
        if (firstMeets >= 0)
          expect(verdicts.slice(firstMeets).every((verdict) => verdict === "meets")).toBe(true);
        sorted.forEach((flow, i) => {
          expect(verdicts[i]).toBe(flow >= required ? "meets" : "short");
        });
      }),
      { seed: 26, numRuns: 200 },
    );
  });

  it("OPEN_AREA does not mind the order in which openings are named", () => {
    const list = ["A", "B", "C", "D", "E"];
    const sizes = [4, 12, 24, 7, 9];
    fc.assert(
      fc.property(fc.shuffledSubarray(list, { minLength: 1 }), (open) => {
        const total = open.reduce((sum, label) => sum + (sizes[list.indexOf(label)] as number), 0);
        expect(cellOf("OPEN_AREA", open.join("+"), column(...list), column(...sizes))).toBe(total);
      }),
      { seed: 27, numRuns: 100 },
    );
  });
});
