import { describe, expect, it } from "vitest";
import { rowPattern } from "../../src/cells";

describe("the row pattern of a formula", () => {
  it("is equal for a formula copied down", () => {
    expect(rowPattern("B2*$C$1+SUM(D$2:D2)", 1, 0)).not.toBe(
      rowPattern("B3*$C$1+SUM(D$2:D2)", 2, 0),
    );
    expect(rowPattern("B2*$C$1", 1, 0)).toBe(rowPattern("B3*$C$1", 2, 0));
    expect(rowPattern("SUM(D$2:D9)", 8, 5)).toBe(rowPattern("SUM(D$2:D10)", 9, 5));
  });

  it("is equal for a formula copied across", () => {
    expect(rowPattern("A1*A$9", 1, 0)).toBe(rowPattern("B1*B$9", 1, 1));
    expect(rowPattern("SUM(A:A)", 1, 5)).toBe(rowPattern("SUM(B:B)", 1, 6));
    expect(rowPattern("SUM(1:1)", 4, 5)).toBe(rowPattern("SUM(2:2)", 5, 5));
  });

  it("differs where a reference was not copied along", () => {
    expect(rowPattern("B2*1.07", 1, 0)).not.toBe(rowPattern("B2*1.07", 2, 0));
    expect(rowPattern("B2*1.07", 1, 0)).not.toBe(rowPattern("B2*1.08", 1, 0));
    expect(rowPattern("$B$2", 1, 0)).not.toBe(rowPattern("$B$3", 2, 0));
  });

  it("writes references relative to the cell", () => {
    expect(rowPattern("A1+$B$2+C$3+$D4", 0, 0)).toBe("RC+R2C2+R3C[2]+R[3]C4");
    expect(rowPattern("'My A1'!B2+Data!a1", 1, 1)).toBe("'My A1'!RC+Data!R[-1]C[-1]");
    expect(rowPattern("SUM($A:C,2:$3)", 0, 0)).toBe("SUM(C1:C[2],R[1]:R3)");
  });

  it("leaves texts, names, functions and tables as they are", () => {
    for (const text of [
      '"A1 and ""B2"""',
      "LOG10(2)",
      "A1B+tax_2024+_A1",
      "Table1[[#This Row],[A1]]",
      "T1[B2]",
      "Q1!foo",
      "'It''s B2'!foo",
      "ABCD1+A12345678",
      "XFE1",
      "1E5+A1048577",
      "[2]!_xldudf_FANROW_X()",
    ])
      expect(rowPattern(text, 3, 3)).toBe(text);
  });
});
