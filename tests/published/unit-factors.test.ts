import { unit } from "mathjs";
import { describe, expect, it } from "vitest";
import { convert, units } from "../../src/units";

/** How the general library mathjs writes each of our units; it knows an inch of water as 25.4 mm. */
const written: Readonly<Record<string, string>> = {
  in: "1 in",
  ft: "1 ft",
  mm: "1 mm",
  cm: "1 cm",
  m: "1 m",
  "in²": "1 in^2",
  "ft²": "1 ft^2",
  "mm²": "1 mm^2",
  "cm²": "1 cm^2",
  "m²": "1 m^2",
  "ft³": "1 ft^3",
  "m³": "1 m^3",
  cfm: "1 ft^3/minute",
  "L/s": "1 L/s",
  "m³/h": "1 m^3/hour",
  "m³/s": "1 m^3/s",
  "m³/min": "1 m^3/minute",
  "L/min": "1 L/minute",
  "mm w.c.": "1 mmH2O",
  Pa: "1 Pa",
  hPa: "1 hPa",
  kPa: "1 kPa",
  "in w.c.": "25.4 mmH2O",
};
const base = { length: "m", area: "m^2", volume: "m^3", flow: "m^3/s", pressure: "Pa" } as const;

describe("the unit factors against mathjs' own units", () => {
  it.each(units.map((entry) => [entry.name, entry] as const))(
    "has %s as mathjs has it",
    (name, entry) => {
      const text = written[name];
      expect(text, `how mathjs writes ${name}`).toBeDefined();
      const expected = unit(text as string).toNumber(base[entry.dimension]);
      // Both rest on the same exact definitions; the products round differently by an ulp or two.
      expect(Math.abs(entry.factor / expected - 1)).toBeLessThan(1e-15);
    },
  );

  // ISO 80000 and NIST SP 811 appendix B: exact, or to the digits printed there (from memory).
  it.each([
    [1, "cfm", "L/s", 0.4719474, 7],
    [1, "in w.c.", "Pa", 249.089, 3],
    [1, "in²", "cm²", 6.4516, 10],
    [1, "ft²", "m²", 0.09290304, 12],
    [1, "m³/h", "cfm", 0.5885778, 7],
  ])("%d %s is %s of the printed factor", (value, from, to, expected, digits) => {
    expect(convert(value, from, to)).toBeCloseTo(expected, digits);
  });
});
