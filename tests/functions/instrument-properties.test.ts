import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { call, cellOf, isProblem } from "./call";

const size = fc.double({ min: 0.1, max: 1000, noNaN: true });
const constant = fc.double({ min: 0.05, max: 1.8, noNaN: true });
const exponent = fc.oneof(
  fc.double({ min: 0.4, max: 1, noNaN: true }),
  fc.double({ min: -1, max: -0.4, noNaN: true }),
);
const relative = (actual: unknown, expected: number) => Math.abs((actual as number) / expected - 1);

describe("properties of the functions for air and instruments", () => {
  it("DEVICE_FLOW with the exponent 0.5 is FLOW, and BOX_PRESSURE inverts it", () => {
    fc.assert(
      fc.property(size, size, constant, (area, amount, K) => {
        // A power in place of a root, and two products: a few ulps of 2e-16.
        const read = cellOf("DEVICE_FLOW", amount, K * area, 0.5);
        expect(relative(read, cellOf("FLOW", area, amount, K) as number)).toBeLessThan(2e-15);
        const pressure = cellOf("BOX_PRESSURE", area, amount, K);
        expect(relative(cellOf("DEVICE_FLOW", pressure, K * area, 0.5), amount)).toBeLessThan(
          4e-15,
        );
      }),
      { seed: 41, numRuns: 300 },
    );
  });

  it("DEVICE_FLOW inverts itself with constant ^ (−1/exponent) and 1/exponent", () => {
    fc.assert(
      fc.property(size, size, exponent, (reading, K, n) => {
        const flow = cellOf("DEVICE_FLOW", reading, K, n);
        const back = cellOf("DEVICE_FLOW", flow, K ** (-1 / n), 1 / n);
        // Powers of up to 1000 ^ 2.5: an ulp of the exponent counts some twenty times.
        expect(relative(back, reading)).toBeLessThan(1e-13);
      }),
      { seed: 42, numRuns: 300 },
    );
  });

  it("a bag is a device with the exponent −1", () => {
    fc.assert(
      fc.property(size, size, (volume, seconds) => {
        const bag = cellOf("BAG_FLOW", volume, seconds) as number;
        expect(relative(cellOf("DEVICE_FLOW", seconds, 60 * volume, -1), bag)).toBeLessThan(2e-15);
        const litres = cellOf("BAG_FLOW", volume * 0.3048 ** 3 * 1000, seconds, "si");
        expect(relative(litres, (bag * 0.3048 ** 3 * 1000) / 60)).toBeLessThan(2e-15);
      }),
      { seed: 43, numRuns: 200 },
    );
  });

  it("the density of air is the same in both systems", () => {
    const t = fc.double({ min: -39, max: 59, noNaN: true });
    const h = fc.double({ min: 1, max: 100, noNaN: true });
    const p = fc.option(fc.double({ min: 510, max: 1090, noNaN: true }));
    const z = fc.option(fc.double({ min: -490, max: 4990, noNaN: true }));
    fc.assert(
      fc.property(t, h, p, z, (celsius, humidity, hectopascals, metres) => {
        const si = cellOf("AIR_DENSITY", celsius, humidity, hectopascals, metres, "si") as number;
        const ip = cellOf(
          "AIR_DENSITY",
          celsius * 1.8 + 32,
          humidity,
          hectopascals === null ? null : hectopascals / (0.254 * 133.322387415),
          metres === null ? null : metres / 0.3048,
        );
        // A barometer brought down to sea level is refused in both.
        if (isProblem(si)) {
          expect(isProblem(ip)).toBe(true);
          return;
        }
        // The temperature loses an ulp on the way, near the ice point the choice of the equation.
        expect(relative(ip, si)).toBeLessThan(1e-8);
      }),
      { seed: 44, numRuns: 300 },
    );
  });

  it("factor, actual flow and standard flow fit together: mass goes with the root of density", () => {
    const rho = fc.double({ min: 0.6, max: 1.6, noNaN: true });
    fc.assert(
      fc.property(size, rho, rho, (flow, density, reference) => {
        const F = cellOf("AIR_FACTOR", density, reference) as number;
        expect(relative(cellOf("AIR_FACTOR", reference, density), 1 / F)).toBeLessThan(1e-14);
        const standard = cellOf("STANDARD_FLOW", flow * F, density, reference);
        expect(relative(standard, flow / F)).toBeLessThan(1e-14);
      }),
      { seed: 45, numRuns: 200 },
    );
  });

  it("the fan that FAN_SIZE chooses meets the rate with its margin, and no smaller one does", () => {
    const rating = fc.integer({ min: 10, max: 500 });
    fc.assert(
      fc.property(
        fc.array(rating, { minLength: 1, maxLength: 12 }),
        fc.integer({ min: 10, max: 400 }),
        fc.integer({ min: 0, max: 50 }),
        (ratings, required, margin) => {
          const size = cellOf("FAN_SIZE", required, margin, [ratings]);
          // Whole numbers of hundredths are exact, and need no hair.
          const enough = ratings.filter((rated) => rated * 100 >= required * (100 + margin));
          if (enough.length > 0) expect(size).toBe(Math.min(...enough));
          else expect(size).toBe(`none in the list, largest ${Math.max(...ratings)}`);
        },
      ),
      { seed: 46, numRuns: 300 },
    );
  });

  it("the spread of a device never falls as its limit grows, and covers ± 1.96 or more of it", () => {
    const percent = fc.double({ min: 0.1, max: 20, noNaN: true });
    fc.assert(
      fc.property(size, percent, percent, (flow, share, more) => {
        const [u, , expanded] = call("DEVICE_SPREAD", flow, 1, 1, share, 0)[0] as number[];
        const [wider] = call("DEVICE_SPREAD", flow, 1, 1, share + more, 0)[0] as number[];
        expect(wider).toBeGreaterThan(u as number);
        expect((expanded as number) / (u as number)).toBeGreaterThan(1.9599);
      }),
      { seed: 47, numRuns: 200 },
    );
  });
});
