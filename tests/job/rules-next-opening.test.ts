import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { aimedPressure, nextOpening } from "../../src/job";

const box = [
  { label: "A", area: 4 },
  { label: "B", area: 12 },
  { label: "C", area: 24 },
];

describe("the opening to use next", () => {
  it("is the one that brings the box nearest to the aimed pressure", () => {
    // 16 Pa at 12: the same flow through 24 makes a quarter of the pressure.
    expect(nextOpening(16, 12, box)).toEqual({ label: "C", area: 24, pressure: 4, inWindow: true });
  });

  it("may be a set of openings", () => {
    // 9 Pa at 24 is 4.41 times the aim's square root: 36 gives 4 Pa.
    expect(nextOpening(9, 24, box)).toEqual({
      label: "B+C",
      area: 36,
      pressure: 4,
      inWindow: true,
    });
  });

  it("is a smaller one where the pressure is too low", () => {
    expect(nextOpening(0.5, 24, box)?.label).toBe("B");
  });

  it("is the nearest where none brings the box into the window, and says so", () => {
    const next = nextOpening(200, 40, box);
    expect(next).toMatchObject({ label: "A+B+C", inWindow: false });
    expect(next?.pressure).toBeCloseTo(200, 12);
    expect(nextOpening(0.001, 4, box)).toMatchObject({ label: "A", inWindow: false });
  });

  it("is nothing for a box without openings", () => {
    expect(nextOpening(16, 12, [])).toBeUndefined();
  });

  it("prefers one opening to a set of the same area", () => {
    const twice = [...box, { label: "D", area: 36 }];
    expect(nextOpening(9, 24, twice)?.label).toBe("D");
  });

  it("keeps to the window asked for", () => {
    expect(nextOpening(16, 12, box, { low: 5, high: 9 })).toMatchObject({
      label: "A+B",
      pressure: 9,
    });
  });

  it("aims at the middle of a window that leaves 4 Pa out", () => {
    // A fan of 51.36 cfm: 24 in² is 4 Pa. The middle of 5 to 8 Pa is √40 = 6.3 Pa, at 19.1 in².
    const many = [16, 17.5, 19, 20.5, 21.4, 24, 36].map((area) => ({ label: `${area}`, area }));
    expect(nextOpening(4, 24, many, { low: 5, high: 8 })?.label).toBe("19");
    // The middle of 1 to 3 Pa is √3 = 1.7 Pa, at 36.5 in²; 28 in² is just inside, at 2.94 Pa.
    const few = [24, 28, 36].map((area) => ({ label: `${area}`, area }));
    expect(nextOpening(9, 16, few, { low: 1, high: 3 })?.label).toBe("36");
  });

  it("has no single opening that beats it", () => {
    const areas = fc.array(fc.integer({ min: 1, max: 100 }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(areas, fc.integer({ min: 1, max: 400 }), (sizes, tenths) => {
        const openings = sizes.map((area, i) => ({ label: `N${i}`, area }));
        const pressure = tenths / 10;
        const next = nextOpening(pressure, 20, openings);
        const off = (area: number) =>
          Math.abs(Math.log((pressure * (20 / area) ** 2) / aimedPressure));
        for (const { area } of openings)
          expect(off(next?.area as number)).toBeLessThanOrEqual(off(area) + 1e-9);
      }),
      { seed: 11, numRuns: 100 },
    );
  });

  it("is found among many openings too, one and two at a time", () => {
    const many = Array.from({ length: 40 }, (_, i) => ({ label: `N${i}`, area: 1 + i / 100 }));
    many.push({ label: "last", area: 22.8 });
    expect(nextOpening(16, 12, many)?.label).toBe("N20+last");
  });
});
