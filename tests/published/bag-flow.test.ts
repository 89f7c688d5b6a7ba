import { unit } from "mathjs";
import { describe, expect, it } from "vitest";
import { cellOf } from "../functions/call";

const bag = (...args: readonly unknown[]) => cellOf("BAG_FLOW", ...args) as number;

describe("the timed bag", () => {
  // The US gallon is 231 in³ by definition, as the general library mathjs has it: 0.13368 ft³ to five
  // digits (NIST Handbook 44, appendix C: from memory).
  const gallon = unit(1, "gallon").toNumber("ft^3");

  it.each([
    [32, 4],
    [55, 8.2],
    [33, 2.5],
  ])("of %d gal in %d s is 8 × gallons ÷ seconds within 0.3 %", (gallons, seconds) => {
    // 60 · 0.13368 is 8.0208: the field rule of 8 (common practice) is that rounded.
    const rule = (8 * gallons) / seconds;
    expect(Math.abs(bag(gallons * gallon, seconds) / rule - 1)).toBeLessThan(0.003);
    expect(bag(gallons * 0.13368, seconds)).toBeCloseTo((8.0208 * gallons) / seconds, 3);
  });

  it("is the same air in litres, as mathjs converts them", () => {
    const litres = unit(4, "ft^3").toNumber("L");
    const cfm = unit(bag(litres, 4.8, "si"), "L/s").toNumber("ft^3/minute");
    expect(Math.abs(cfm / bag(4, 4.8) - 1)).toBeLessThan(1e-12);
  });
});
