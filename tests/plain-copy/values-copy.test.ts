import { describe, expect, it } from "vitest";
import { valuesCopy } from "../../src/plain-copy";
import { Workbook } from "../../src/workbook";
import { demos } from "./demos";
import { formsWorkbook } from "./forms";

describe("the values copy", () => {
  const files = { ...demos, "forms.xlsx": formsWorkbook().save() };

  it.each(Object.keys(files))("keeps every value of %s and no formula", (name) => {
    const bytes = files[name as keyof typeof files]!;
    const [before, after] = [Workbook.open(bytes), Workbook.open(valuesCopy(bytes).bytes)];
    expect(after.sheets.map((sheet) => sheet.name)).toEqual(before.sheets.map(({ name }) => name));
    let formulas = 0;
    for (const sheet of before.sheets)
      for (const { row, col, value, formula, style } of sheet.cells()) {
        if (formula !== null) formulas++;
        const cell = after.sheet(sheet.name)?.cell(row, col);
        expect(cell).toMatchObject({ value, style, formula: null, arrayRef: null });
      }
    expect(formulas).toBeGreaterThan(30);
  });

  it.each(Object.keys(demos))("keeps every part of %s but the sheets with formulas", (name) => {
    const [before, after] = [
      Workbook.open(demos[name]!),
      Workbook.open(valuesCopy(demos[name]!).bytes),
    ];
    for (const part of before.partNames())
      if (!part.includes("worksheets/sheet")) expect(after.part(part)).toEqual(before.part(part));
  });

  it("is the file itself where there is no formula", () => {
    const workbook = Workbook.create();
    workbook.addSheet("Sheet", { rows: [[{ value: 1 }, { value: "" }]] });
    const bytes = workbook.save();
    expect(Buffer.from(valuesCopy(bytes).bytes).equals(Buffer.from(bytes))).toBe(true);
  });

  it("tells of each formula with which no value was stored", () => {
    const workbook = Workbook.create();
    workbook.addSheet("Sheet", {
      rows: [[{ value: 1 }, { formula: "A1*2" }, { formula: "A1", value: 1 }]],
    });
    const { left } = valuesCopy(workbook.save());
    expect(left).toMatchObject([{ sheet: "Sheet", cell: "B1" }]);
    expect(left[0]?.why).toContain("no value was stored");
  });
});
