import { describe, expect, it } from "vitest";
import { checkSheetName, linesOf, sheetNameOf } from "../../src/cells";
import { placeOf } from "../../src/records";
import { PlanRows } from "../../src/records/plan-rows";

describe("The name of a record's sheet", () => {
  it("holds only what a sheet's name may, within 31 characters", () => {
    const nameOf = (text: string) => sheetNameOf(text, "Record");
    expect(nameOf("Record Lot 3/4: [east]?")).toBe("Record Lot 3 4 east");
    expect(nameOf("'quoted'")).toBe("quoted");
    expect(nameOf("::")).toBe("Record");
    expect(nameOf("History")).toBe("Record");
    expect(nameOf("Lot\u001b[1m\ufffe 4")).toBe("Lot 1m 4");
    expect(nameOf(`${"x".repeat(30)}'d`)).toBe("x".repeat(30));
    expect(nameOf(`${"x".repeat(30)}\u{1f3e0}`)).toBe("x".repeat(30));
    expect(nameOf(`Record ${"x".repeat(60)}`)).toHaveLength(31);
    expect(() => checkSheetName(nameOf("History"), [])).not.toThrow();
  });

  const plan = { name: "Record", mark: "Record of fan flow tests" };

  it("is the one of the sheet made before, whatever the case", () => {
    const sheets = [{ name: "RECORD", first: plan.mark }];
    expect(placeOf(plan, sheets)).toEqual({ name: "RECORD", isThere: true });
  });

  it("is a free one beside a foreign sheet, and the same again the next time", () => {
    const foreign = { name: "Record", first: "Vinyl" };
    expect(placeOf(plan, [foreign])).toEqual({ name: "Record 2", isThere: false });
    const own = { name: "Record 2", first: plan.mark };
    expect(placeOf(plan, [foreign, own])).toEqual({ name: "Record 2", isThere: true });
    const long = { name: "x".repeat(31), mark: "m" };
    expect(placeOf(long, [{ name: long.name, first: null }]).name).toBe(`${"x".repeat(29)} 2`);
  });
});

describe("The rows of a plan", () => {
  it("are as high as the lines of their longest text", () => {
    expect(linesOf("one two three", 20)).toBe(1);
    expect(linesOf("one two three", 8)).toBe(2);
    expect(linesOf("a\nb", 20)).toBe(2);
    expect(linesOf("x".repeat(25), 10)).toBe(3);
    // Smaller letters take less room.
    const narrow = new PlanRows([11], "", "");
    for (const size of [10, 11]) narrow.line("x".repeat(12), { wrap: true, size });
    const [small, usual] = narrow.rows.slice(2).map(({ height }) => height);
    expect(usual).toBeGreaterThan(1.5 * Number(small));
    const rows = new PlanRows([10, 10], "", "");
    rows.line("short", { wrap: true });
    rows.line("a text that needs several lines of so narrow a sheet", { wrap: true });
    const [short, long] = rows.rows.slice(2).map(({ height }) => height);
    expect(long).toBeGreaterThan(2 * (short ?? 0));
  });

  it("merge what spans columns and nothing else", () => {
    const rows = new PlanRows([5, 5, 5], "", "");
    rows.add([
      { span: 2, value: "a", look: {} },
      { span: 1, value: "b", look: {} },
    ]);
    expect(rows.merges).toEqual(["A1:C1", "A2:C2", "A3:B3"]);
    expect(rows.rows[2]?.cells.map((cell) => cell?.value)).toEqual(["a", null, "b"]);
  });
});
