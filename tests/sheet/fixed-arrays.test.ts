// Array formulas of the older kind: [MS-XLSX] marks a spilled formula by the cell's metadata (cm), these have none.
// That a short result repeats or ends in #N/A: Microsoft's "Guidelines and examples of array formulas".
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { Workbook } from "../../src/workbook";
import { book, Desk } from "./book";

/** A sheet with 1, 2, 3 in A1:A3 and an array formula of the older kind that fills C1:C3. */
function older(formula: string): Desk {
  const made = book({
    A1: 1,
    A2: 2,
    A3: 3,
    C1: { formula, arrayRef: "C1:C3", value: 0 },
    C2: 0,
    C3: 0,
  });
  const parts = unzipSync(made.save());
  const [path] = Object.keys(parts).filter((name) => /worksheets\/.*xml$/.test(name));
  parts[path!] = strToU8(strFromU8(parts[path!]!).replace(/ cm="1"/, ""));
  return new Desk(Workbook.open(zipSync(parts)));
}

describe("array formulas of the older kind", () => {
  it.each<[string, unknown[]]>([
    ["A1:A3*10", [10, 20, 30]],
    ["SUM(A1:A3)", [6, 6, 6]],
    ["A1:A2*10", [10, 20, { error: "#N/A" }]],
    ["ROW(1:9)*A1:A1", [1, 2, 3]],
  ])("fill their range and nothing else: %s", (formula, expected) => {
    const own = older(formula);
    own.model.recalculateAll();
    expect(own.values("C1:C4").flat()).toEqual([...expected, null]);
    expect(own.model.recompute("Main", 2, 2)).toEqual({ value: expected[2] });
  });

  it("keep range and kind in the file", () => {
    const own = older("SUM(A1:A3)");
    own.type("A1", "5");
    const again = Workbook.open(own.workbook.save());
    expect(again.sheet("Main")?.cell(0, 2)).toMatchObject({ arrayRef: "C1:C3", value: 10 });
    expect(again.sheet("Main")?.cell(2, 2)?.value).toBe(10);
    expect(new Desk(again).model.recompute("Main", 1, 2)).toEqual({ value: 10 });
  });

  it("are not changed in part", () => {
    const own = older("SUM(A1:A3)");
    expect(() => own.type("C2", "7")).toThrow("part of the array formula that fills C1:C3");
    expect(() => own.type("C1", "")).toThrow("change that formula as a whole");
    expect(own.values("C1:C3").flat()).toEqual([0, 0, 0]);
  });
});
