import { describe, expect, it } from "vitest";
import { readTyped } from "../../src/sheet";

describe("typed text", () => {
  it.each<[string, unknown]>([
    ["12.5", 12.5],
    ["-4", -4],
    ["1e3", 1000],
    ["1,234.5", 1234.5],
    ["12%", 0.12],
    ["2026-03-05", 46086],
    ["3/5/2026", 46086],
    ["5-Mar-2026", 46086],
    ["06:00", 0.25],
    ["true", true],
    ["#n/a", { error: "#N/A" }],
    ["", null],
    ["'007", "007"],
    ["'", ""],
    ["A+C", "A+C"],
    ["12 openings", "12 openings"],
    [" note ", " note "],
  ])("%j is %j", (text, value) => {
    expect(readTyped(text, false).value).toEqual(value);
  });

  it.each<[string, string | undefined]>([
    ["=A1", "=A1"],
    ["+A1", "=+A1"],
    ["-B2*2", "=-B2*2"],
    ["@A1:A9", "=@A1:A9"],
    ["-4", undefined],
    ["- no reading", undefined],
    ["+A1)", undefined],
    ["@home", undefined],
  ])("%j is the formula %j", (text, formula) => {
    expect(readTyped(text, false).formula).toBe(formula);
  });

  it("counts dates from 1904 where the workbook does", () => {
    expect(readTyped("2026-03-05", true).value).toBe(46086 - 1462);
    expect(readTyped("46086", true).value).toBe(46086);
  });

  it("suggests the format of the way of typing", () => {
    expect(readTyped("2026-03-05", false).formatId).toBe(14);
    expect(readTyped("5", false).formatId).toBeUndefined();
  });
});
