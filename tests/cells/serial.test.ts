import { describe, expect, it } from "vitest";
import { dayOfSerial, isoDay, offsetOf, serialOf, serialOfDay } from "../../src/cells";

describe("serial numbers of days", () => {
  // ECMA-376 part 1, 18.17.4.1: 1900-01-01 is 1, 1904-01-01 is 0 where days count from 1904, and
  // 9999-12-31 is 2958465 and 2957003.
  it.each([
    [1900, 1, 1, 1, undefined],
    [1900, 2, 29, 60, undefined],
    [1900, 3, 1, 61, undefined],
    [1904, 1, 1, 1462, 0],
    [9999, 12, 31, 2_958_465, 2_957_003],
  ])(
    "%i-%i-%i is %i, and %s where days count from 1904",
    (year, month, day, from1900, from1904) => {
      const at = { year, month, day };
      expect(serialOfDay(at, false)).toBe(from1900);
      expect(dayOfSerial(from1900, false)).toEqual(at);
      if (from1904 === undefined) return;
      expect(serialOfDay(at, true)).toBe(from1904);
      expect(dayOfSerial(from1904, true)).toEqual(at);
      expect(from1900 - from1904).toBe(offsetOf(true));
    },
  );

  it("are read as days, with or without the offset of 1904", () => {
    const serial = serialOf(new Date("2026-10-05T23:00:00Z"));
    expect(serial).toBe(46_300);
    expect(isoDay(serial + 0.9)).toBe("2026-10-05");
    expect(isoDay(serial - 1462, offsetOf(true))).toBe("2026-10-05");
    expect([0, -3, Number.NaN, Number.POSITIVE_INFINITY].map((each) => isoDay(each))).toEqual([
      "",
      "",
      "",
      "",
    ]);
  });
});
