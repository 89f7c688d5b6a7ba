import { describe, expect, it } from "vitest";
import { cellOf } from "../functions/call";

// Common practice: what the trade does and reads, with no text behind it.
describe("common practice with a flow box", () => {
  it("has a 4¼ in round opening at 14.19 in²", () => {
    expect(cellOf("ROUND_AREA", 4.25) as number).toBeCloseTo(14.19, 2); // given to two decimals
  });

  it("reads about 41 cfm at about 7 Pa through it", () => {
    // Within 4 %: half a pascal of "about 7 Pa" is 3.6 % of flow, and 41 is a rounded number.
    const flow = cellOf("FLOW", cellOf("ROUND_AREA", 4.25), 7) as number;
    expect(Math.abs(flow - 41) / 41).toBeLessThan(0.04);
  });

  it("trusts the box up to 8 Pa and not above", () => {
    expect(cellOf("RANGE_STATUS", 8)).toBe("in range");
    expect(cellOf("RANGE_STATUS", 8.0001)).toBe("above");
    expect(cellOf("RANGE_STATUS", 8.1)).toBe("above");
  });

  it("does not trust it below 1 Pa, nor with the hoses crossed", () => {
    expect(cellOf("RANGE_STATUS", 1)).toBe("in range");
    expect(cellOf("RANGE_STATUS", 0.9)).toBe("below");
    expect(cellOf("RANGE_STATUS", -4)).toBe("reversed");
  });
});
