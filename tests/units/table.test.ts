import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { conversionFactor, convert, findUnit, units } from "../../src/units";

const pairs = units.flatMap((from) =>
  units.filter((to) => to.dimension === from.dimension).map((to) => [from.name, to.name] as const),
);

describe("the units of the trade", () => {
  it("leave no spelling to two units", () => {
    const spellings = units.flatMap(({ name, words }) => [
      ...new Set([name.toLowerCase(), ...words]),
    ]);
    expect(new Set(spellings).size).toBe(spellings.length);
  });

  it("list spellings in lower case, as they are compared", () => {
    for (const { words } of units) for (const word of words) expect(word).toBe(word.toLowerCase());
  });

  it.each(units.map((unit) => [unit.name, unit] as const))(
    "find %s by its name and by every spelling, whatever the case",
    (name, unit) => {
      for (const spelling of [name, ...unit.words])
        for (const text of [spelling, spelling.toUpperCase(), ` ${spelling} `])
          expect(findUnit(text)?.name, text).toBe(name);
    },
  );

  it("know nothing of other units", () => {
    for (const text of ["", "furlong", "psi", "cfm/W"]) expect(findUnit(text)).toBeUndefined();
  });
});

describe("conversion", () => {
  it.each(pairs)("from %s to %s and back gives the number again", (from, to) => {
    fc.assert(
      fc.property(fc.double({ min: 1e-9, max: 1e9, noNaN: true }), (value) => {
        // Two multiplications by rounded factors: a few ulps, 4e-16 each.
        const back = convert(convert(value, from, to), to, from);
        expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-15 * Math.abs(value));
      }),
      { seed: 7, numRuns: 30 },
    );
  });

  it("leaves a value in its own unit untouched, however the unit is spelled", () => {
    expect(convert(0.1, "in2", "sq in")).toBe(0.1);
  });

  it.each([
    [1, "ft", "in", 12],
    [144, "in²", "ft²", 1],
    [1, "m³/h", "L/s", 1 / 3.6],
    [1, "kPa", "hPa", 10],
    [1, "ft³", "m³", 0.028316846592],
  ])("has %d %s in %s as %d", (value, from, to, expected) => {
    expect(convert(value, from, to)).toBeCloseTo(expected, 12);
  });

  it("refuses an unknown unit and names it", () => {
    expect(() => convert(1, "furlong", "m")).toThrow("unknown unit: furlong");
    expect(() => conversionFactor("m", "furlong")).toThrow("unknown unit: furlong");
  });

  it("refuses units of different things and says which", () => {
    expect(() => convert(1, "cfm", "Pa")).toThrow("cfm measures flow and Pa pressure");
    expect(() => convert(1, "ft", "ft²")).toThrow("ft measures length and ft² area");
  });
});
