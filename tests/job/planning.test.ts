import { describe, expect, it } from "vitest";
import { approachError, holeSaws, planOpenings } from "../../src/job";

const constant = 1.07;
const face = { width: 20, height: 20, rim: 0.75 };

describe("The face of a planned box", () => {
  // Approach factor E = 1/√(1 − β⁴), ISO 5167-1; β² is the open share of the face.
  it("makes an opening of 9 % of it read 0.4 % high and one of 25 % read 3.3 % high (ISO 5167-1)", () => {
    expect(100 * approachError(0.09 * 400, face)).toBeCloseTo(0.407, 3);
    expect(100 * approachError(0.25 * 400, face)).toBeCloseTo(3.28, 2);
  });

  it("holds every hole inside its rim, none over another, also where two stand at a slant", () => {
    // 8 and 7 13/16 in with three rims between take 18.06 in side by side.
    const side = 18;
    const { holes = [] } = planOpenings(20, 150, constant, {
      face: { ...face, width: side, height: side },
    });
    expect(holes.length).toBeGreaterThan(1);
    for (const [i, { x, y, size }] of holes.entries()) {
      for (const place of [x, y]) {
        expect(place - size / 2).toBeGreaterThanOrEqual(face.rim - 1e-9);
        expect(place + size / 2).toBeLessThanOrEqual(side - face.rim + 1e-9);
      }
      for (const other of holes.slice(i + 1))
        expect(Math.hypot(x - other.x, y - other.y)).toBeGreaterThanOrEqual(
          (size + other.size) / 2 + face.rim - 1e-9,
        );
    }
  });

  // 300 / (1.07 √8) = 99.13 in², and a circle of 11 1/4 in has π/4 · 11.25² = 99.40 in².
  it("takes a last opening no larger than the highest flow needs, so that it still fits a face", () => {
    expect(planOpenings(20, 300, constant, { face }).openings.at(-1)?.size).toBe(11.25);
  });

  it("refuses holes that do not fit in the units of the job", () => {
    const small = { width: 15, height: 15, rim: 0.75 };
    expect(() => planOpenings(20, 150, constant, { face: small })).toThrow(/with 0\.75 in between/);
    const system = "si";
    expect(() => planOpenings(20, 150, constant, { face: small, system })).toThrow(/with 7\.5 mm/);
  });

  it("refuses an opening of more than a quarter of it and says which face would do", () => {
    expect(() =>
      planOpenings(20, 400, constant, { face: { ...face, width: 12, height: 12 } }),
    ).toThrow(/of the face and read .* high: use a face of at least|do not fit on the face/);
  });
});

describe("The holes of a planned box", () => {
  it("are as few as read every flow, each inside the window of its neighbours", () => {
    for (const options of [{}, { shape: "square" as const }, { saws: holeSaws.ip }]) {
      const { openings } = planOpenings(20, 150, constant, options);
      expect(openings[0]?.reach.lowest).toBeLessThanOrEqual(20);
      expect(openings.at(-1)?.reach.highest).toBeGreaterThanOrEqual(150);
      for (const [i, { reach }] of openings.slice(1).entries())
        expect(reach.lowest).toBeLessThanOrEqual(openings[i]?.reach.highest as number);
    }
  });

  it("never nearly repeat: the last has half as much again as the one before where the face allows", () => {
    for (const most of [57, 60, 146, 148, 200, 390])
      for (const options of [{}, { shape: "square" as const }, { saws: holeSaws.ip }]) {
        const areas = planOpenings(20, most, constant, options).openings.map(({ area }) => area);
        for (const [i, area] of areas.slice(1).entries())
          expect(area).toBeGreaterThan(1.5 * (areas[i] as number));
      }
    const small = { width: 10, height: 10, rim: 0.5 };
    const [first, last] = planOpenings(20, 60, constant, { face: small }).openings;
    expect(last?.area).toBeGreaterThan(first?.area as number);
    expect(last?.area).toBeLessThanOrEqual(25);
  });

  it("are several equal ones where no saw is large enough for one", () => {
    const { openings } = planOpenings(20, 300, constant, { saws: holeSaws.ip });
    const several = openings.filter(({ count }) => count > 1);
    expect(several.length).toBeGreaterThan(0);
    for (const { size, count, area } of openings) {
      expect(holeSaws.ip).toContain(size);
      expect(area).toBeCloseTo((count * Math.PI * size ** 2) / 4, 9);
    }
  });

  it("are refused where none that can be cut is small enough", () => {
    expect(() => planOpenings(0.2, 1, constant, { saws: holeSaws.ip })).toThrow(
      /no hole that can be cut/,
    );
  });
});
