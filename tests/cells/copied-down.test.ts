import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CopiedDown, rowPattern } from "../../src/cells";

const model = (formula: string, row: number, col = 3) => new CopiedDown(formula, row, col);

/** Pieces of formulas; a function of the row where they move with it. */
const pieces: ((row: number) => string)[] = [
  (row) => `B${row + 1}`,
  (row) => `$C${row + 3}`,
  (row) => `Fans!K${row + 1}:M${row + 1}`,
  (row) => `SUM(D$2:D${row + 1})`,
  (row) => `${row + 1}:${row + 2}`,
  (row) => `$1:${row + 2}`,
  () => "$A$1",
  () => "A$9",
  () => "C:C",
  () => '"B2 ""x"""',
  () => "'Q1 B2'!$B$2",
  () => "LOG10(2)",
  () => "1.07",
  () => "tax_2024",
  () => "A1048577",
];

describe("the test for a formula copied down", () => {
  it("knows a formula whose row numbers moved along", () => {
    const formula = 'IF(COUNT(K2:M2)=0,"K2",AVERAGE($K2:M$9)+Job!$B$5)';
    const later = 'IF(COUNT(K100:M100)=0,"K2",AVERAGE($K100:M$9)+Job!$B$5)';
    expect(model(formula, 1).matches(formula, 1)).toBe(true);
    expect(model(formula, 1).matches(later, 99)).toBe(true);
  });

  it.each([
    ["a reference that stayed", "B2+C2", "B3+C2"],
    ["another constant", "B2*1.07", "B3*1.08"],
    ["more after it", "B2", "B3+1"],
    ["less of it", "B2+C2", "B3"],
    ["a row number that goes on", "B2", "B33"],
    ["no row number", "B2", "B"],
    ["another column", "B2", "C3"],
    ["another text", '"B2"&B2', '"B3"&B3'],
  ])("refuses %s", (_, formula, other) => {
    expect(model(formula, 1).matches(other, 2)).toBe(false);
  });

  it("refuses a reference that would leave the sheet", () => {
    expect(model("A1048576", 0).matches("A1048577", 1)).toBe(false);
    expect(model("A1", 1).matches("A0", 0)).toBe(false);
  });

  it("says yes to every formula copied down, and only where the patterns are equal", () => {
    const picked = fc.array(fc.constantFrom(...pieces), { minLength: 1, maxLength: 5 });
    const row = fc.integer({ min: 0, max: 12_000 });
    fc.assert(
      fc.property(picked, picked, row, row, fc.boolean(), (first, other, from, to, same) => {
        const write = (list: typeof first, at: number) => list.map((each) => each(at)).join("+");
        const known = model(write(first, from), from);
        expect(known.matches(write(first, to), to)).toBe(true);
        // Mostly another formula, or the same one written from another row.
        const text = same ? write(first, to + 1) : write(other, to);
        const isEqual = rowPattern(text, to, 3) === rowPattern(write(first, from), from, 3);
        if (!known.matches(text, to)) return;
        expect(isEqual).toBe(true);
        expect(known.at(to)).toBe(text);
      }),
      { numRuns: 2000 },
    );
  });
});
