import { describe, expect, it } from "vitest";
import { type ProofPair, proof } from "../../src/job";

/** Pairs of one opening whose box reads so many percent of the reference too high. */
const pairsOf = (errors: readonly number[], opening = "C", area = 24): ProofPair[] =>
  errors.map((percent, i) => {
    const pressure = 1 + (7 * i) / Math.max(1, errors.length - 1);
    const box = 1.07 * area * Math.sqrt(pressure);
    return { opening, area, pressure, reference: box / (1 + percent / 100) };
  });
const inUse = { constant: 1.07, referenceSpread: 1.5 };

describe("the proof of a box by paired readings", () => {
  it("finds the constant that made exact pairs, and no error", () => {
    const found = proof(pairsOf([0, 0, 0, 0, 0, 0]), { referenceSpread: 1 });
    expect(found.constant.value).toBeCloseTo(1.07, 12);
    expect(found.constant.standardError).toBeLessThan(1e-12);
    // What is left is the reference's own spread.
    expect(found.constant.u).toBeCloseTo(0.0107, 10);
    expect(found.errors.largest).toBeLessThan(1e-12);
    expect(found).toMatchObject({ verdict: "proved", pairs: 6, flows: 6, requirement: 10 });
  });

  it("gives bias, deviation, limits and largest error in percent of the reference", () => {
    const { errors } = proof(pairsOf([1, -2, 4, 1, 1]), inUse);
    expect(errors.bias).toBeCloseTo(1, 10);
    expect(errors.sd).toBeCloseTo(Math.sqrt(18 / 4), 10);
    expect(errors.high).toBeCloseTo(1 + 1.96 * Math.sqrt(18 / 4), 10);
    expect(errors.largest).toBeCloseTo(4, 10);
  });

  it("is proved within the requirement and not proved beyond, each with its reasons", () => {
    const good = proof(pairsOf([1, -2, 3, 0, 1, -1]), inUse);
    expect(good.verdict).toBe("proved");
    expect(good.reasons[0]).toMatch(
      /^The next reading, with the spread of the reference, lies from −\d.\d % to \d(.\d)? % in 95 of 100 cases \(limits of agreement of these pairs alone: −\d.\d % to \d.\d %\), and no error is larger than 3 %: within ±10 %\.$/,
    );
    const bad = proof(pairsOf([1, -2, 12, 0, 1, -1]), inUse);
    expect(bad.verdict).toBe("not proved");
    expect(bad.reasons[0]).toBe("The largest error is 12 %, beyond ±10 %.");
    expect(bad.reasons[1]).toMatch(/^The next reading.*limits of agreement/);
    expect(proof(pairsOf([1, -2, 12, 0, 1, -1]), { ...inUse, requirement: 25 }).verdict).toBe(
      "proved",
    );
  });

  it("counts a constant offset as error only by the constant in use", () => {
    const shifted = pairsOf([12, 12, 12, 12, 12]);
    expect(proof(shifted, inUse).verdict).toBe("not proved");
    const fitted = proof(shifted, { referenceSpread: 1.5 });
    expect(fitted.constant.value).toBeCloseTo(1.07 / 1.12, 10);
    expect(fitted.verdict).toBe("proved");
  });

  it("needs five flows, and repeats of one flow count once", () => {
    const four = proof(pairsOf([0, 0, 0, 0]), inUse);
    expect(four.verdict).toBe("too few pairs");
    expect(four.reasons[0]).toBe("There are 4 flows that differ by more than 5 %; 5 are needed.");
    const repeated = proof([...pairsOf([0, 0]), ...pairsOf([1, 1]), ...pairsOf([2, 2])], inUse);
    expect(repeated).toMatchObject({ verdict: "too few pairs", pairs: 6, flows: 2 });
    expect(proof(pairsOf([0]), inUse).reasons[0]).toMatch(/^There is 1 flow that/);
    expect(() => proof([], inUse)).toThrow("no pair");
  });

  it("never proves a box better than its reference", () => {
    const found = proof(pairsOf([0, 0, 0, 0, 0]), { constant: 1.07, referenceSpread: 6 });
    expect(found).toMatchObject({ verdict: "not proved", referenceAllows: false });
    expect(found.reasons[0]).toBe(
      "The reference is itself good to ±11.8 % only, which leaves no room for ±10 %: this proof says nothing against the box; prove it again with a better reference.",
    );
    expect(proof(pairsOf([0, 0, 0, 0, 0]), inUse).referenceAllows).toBe(true);
  });

  it("says which part of each opening's window the pairs span", () => {
    const wide = pairsOf([0, 0, 0, 0, 0]);
    const narrow = [2, 3, 5.5].map((pressure) => ({
      opening: "B",
      area: 12,
      pressure,
      reference: 1.07 * 12 * Math.sqrt(pressure),
    }));
    const beyond = [{ ...(narrow[0] as ProofPair), opening: "A", pressure: 12 }];
    const { coverage, reasons } = proof([...wide, ...narrow, ...beyond], inUse);
    expect(coverage).toEqual([
      { opening: "C", pairs: 5, low: 1, high: 8, share: 1 },
      { opening: "B", pairs: 3, low: 2, high: 5.5, share: 0.5 },
      { opening: "A", pairs: 1, low: 12, high: 12, share: 0 },
    ]);
    expect(reasons).toContain(
      "Opening B was read from 2 to 5.5 Pa, 50 % of its window; nothing is proved outside that.",
    );
  });
});
