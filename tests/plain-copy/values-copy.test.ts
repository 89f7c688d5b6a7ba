import { describe, expect, it } from "vitest";
import { valuesCopy } from "../../src/plain-copy";
import { Workbook } from "../../src/workbook";
import { pack, parts, worksheet } from "../workbook/packages";
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

  it("leaves a formula in the heading of a table, and says so", () => {
    const cells =
      '<row r="1"><c r="A1"><f>1+1</f><v>2</v></c><c r="B1"><f>2+1</f><v>3</v></c></row>';
    const link = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/table";
    const bytes = pack({
      ...parts(worksheet(`<sheetData>${cells}</sheetData>`)),
      "xl/worksheets/_rels/sheet1.xml.rels": `<Relationships><Relationship Id="t" Type="${link}" Target="../tables/table1.xml"/></Relationships>`,
      "xl/tables/table1.xml": '<table displayName="T" ref="A1:A3"/>',
    });
    const { bytes: copy, left } = valuesCopy(bytes);
    expect(left).toMatchObject([{ cell: "A1" }]);
    expect(left[0]?.why).toContain('A1 is a heading of the table "T"');
    const [sheet] = Workbook.open(copy).sheets;
    expect([0, 1].map((col) => sheet?.cell(0, col)?.formula)).toEqual(["1+1", null]);
  });
});
