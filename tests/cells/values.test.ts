import { describe, expect, it } from "vitest";
import {
  agrees,
  errors,
  fixed,
  isBlankCell,
  isCellError,
  isIdentical,
  isSameValue,
  numberText,
  shown,
  significant,
} from "../../src/cells";

describe("the same value", () => {
  it("allows for the last digits in which programs differ, and no more", () => {
    expect(isSameValue(0.1 + 0.2, 0.3)).toBe(true);
    expect(isSameValue(1e-17, 0)).toBe(true);
    expect(isSameValue(51.36, 51.360_001)).toBe(false);
    expect(isIdentical(0.1 + 0.2, 0.3)).toBe(false);
  });

  it("takes blanks of either kind as one, and errors by their code", () => {
    expect(isSameValue(null, " ")).toBe(true);
    expect(isIdentical(null, "")).toBe(false);
    expect(isSameValue({ error: "#N/A", message: "no box" }, errors.na)).toBe(true);
    expect(isSameValue(errors.na, errors.value)).toBe(false);
    expect(isSameValue("#N/A", errors.na)).toBe(false);
    expect(isSameValue("1", 1)).toBe(false);
  });

  it("is stored where nothing is, for a formula that gives the 0 of a blank", () => {
    expect(agrees(null, 0)).toBe(true);
    expect(agrees(0, null)).toBe(false);
    expect(isSameValue(null, 0)).toBe(false);
  });
});

describe("a cell", () => {
  it("is blank with nothing or spaces in it, never with 0", () => {
    expect([null, "", "  ", 0, false, "x"].map(isBlankCell)).toEqual([
      true,
      true,
      true,
      false,
      false,
      false,
    ]);
  });

  it("holds an error only where there is a code", () => {
    expect([errors.na, "#N/A", null, {}].map(isCellError)).toEqual([true, false, false, false]);
  });
});

describe("a number as text", () => {
  it("has one minus sign, and never a minus before 0", () => {
    expect(numberText(-4.1)).toBe("−4.1");
    expect(numberText(1e-7)).toBe("1e-7");
    expect(numberText(-0)).toBe("0");
    expect(fixed(-0.04)).toBe("0");
  });

  it("has the digits that are asked for, without zeros that say nothing", () => {
    expect(significant(51.360_04)).toBe("51.36");
    expect(significant(-1234.5678, 3)).toBe("−1230");
    expect(fixed(9.96, 1)).toBe("10");
    expect([49.57, 0.534, 0.0214, 0, -16.24].map(shown)).toEqual([
      "49.6",
      "0.53",
      "0.021",
      "0",
      "−16.2",
    ]);
  });
});
