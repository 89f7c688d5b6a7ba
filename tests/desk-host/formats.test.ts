import { describe, expect, it } from "vitest";
import { Workbook } from "../../src/workbook";
import { hostOf, openDesk, refusal, rows } from "./desk";

describe("Formats", () => {
  it("are set on cells, read back and saved", async () => {
    const host = openDesk({ Data: rows([1, 2]) });
    await Excel.run(async (context) => {
      const range = context.workbook.worksheets.getItem("Data").getRange("A1:B1");
      range.numberFormat = "0.00" as unknown as string[][];
      range.format.fill.color = "#FFCC00";
      range.format.font.bold = true;
      range.format.font.italic = true;
      range.format.font.color = "navy";
      range.format.wrapText = true;
      range.format.horizontalAlignment = "Center";
      range.load(
        "numberFormat,text,format/wrapText,format/horizontalAlignment,format/fill/color,format/font/bold,format/font/italic,format/font/color",
      );
      await context.sync();
      const { format } = range;
      expect(range.numberFormat).toEqual([["0.00", "0.00"]]);
      expect(range.text).toEqual([["1.00", "2.00"]]);
      expect([format.fill.color, format.font.color]).toEqual(["#FFCC00", "#000080"]);
      expect([format.font.bold, format.font.italic, format.wrapText]).toEqual([true, true, true]);
      expect(format.horizontalAlignment).toBe("Center");
    });
    const again = hostOf(Workbook.open(host.save()));
    expect(again.styleAt("Data", 0, 1)).toEqual({
      numberFormat: "0.00",
      bold: true,
      italic: true,
      color: "000080",
      fill: "FFCC00",
      wrap: true,
      align: "center",
    });
  });

  it("are null where the cells differ", async () => {
    openDesk({ Data: rows([1, 2]) });
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Data");
      sheet.getRange("A1").format.fill.color = "#FF0000";
      const cells = sheet.getRange("A1:B1");
      cells.format.fill.load("color");
      cells.format.load("horizontalAlignment");
      await context.sync();
      expect(cells.format.fill.color).toBeNull();
      expect(cells.format.horizontalAlignment).toBe("General");
      sheet.getRange("A1").format.fill.clear();
      cells.format.fill.load("color");
      await context.sync();
      expect(cells.format.fill.color).toBe("#FFFFFF");
    });
  });

  it("take number formats cell by cell, leave out null and refuse nonsense", async () => {
    const host = openDesk({ Data: rows([0.5, 0.5, 46_000]) });
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Data");
      sheet.getRange("A1:C1").numberFormat = [["0%", null as unknown as string, "yyyy"]];
    });
    expect([0, 1, 2].map((col) => host.text("Data", 0, col))).toEqual(["50%", "0.5", "2025"]);
    const { code } = await refusal(async (context) => {
      context.workbook.worksheets.getItem("Data").getRange("A1").numberFormat = [['"open']];
    });
    expect(code).toBe("InvalidArgument");
  });

  it("of whole columns reach the used cells", async () => {
    const host = openDesk({ Data: rows([1], [2]) });
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Data").getRange("A:A").format.font.bold = true;
    });
    expect([host.styleAt("Data", 1, 0).bold, host.styleAt("Data", 5, 0).bold]).toEqual([
      true,
      undefined,
    ]);
  });

  it("refuse what is no colour or alignment", async () => {
    openDesk();
    const color = await refusal(async (context) => {
      context.workbook.worksheets.getItem("Data").getRange("A1").format.fill.color = "reddish";
    });
    const align = await refusal(async (context) => {
      const { format } = context.workbook.worksheets.getItem("Data").getRange("A1");
      format.horizontalAlignment = "Sideways" as "Left";
    });
    expect([color.code, align.code]).toEqual(["InvalidArgument", "InvalidArgument"]);
  });

  it("keep a column's width in points, and fit it to its texts", async () => {
    openDesk({ Data: rows(["a text of thirty characters...", 1]) });
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Data");
      const standard = sheet.getRange("C1").format.load("columnWidth");
      sheet.getRange("B1").format.columnWidth = 90;
      const set = sheet.getRange("B1").format.load("columnWidth");
      const mixed = sheet.getRange("B1:C1").format.load("columnWidth");
      await context.sync();
      expect([standard.columnWidth, set.columnWidth, mixed.columnWidth]).toEqual([48, 90, null]);
    });
    const { code } = await refusal(async (context) => {
      context.workbook.worksheets.getItem("Data").getRange("A1").format.columnWidth = -1;
    });
    expect(code).toBe("InvalidArgument");
  });
});

describe("Validation rules", () => {
  it("offer the entries of a list, and only they where another follows", async () => {
    const host = openDesk();
    await Excel.run(async (context) => {
      const range = context.workbook.worksheets.getItem("Data").getRange("B2:B9");
      range.dataValidation.rule = { list: { inCellDropDown: true, source: "ip,si" } };
      const inside = range.getCell(1, 0).dataValidation.load("rule");
      await context.sync();
      expect(inside.rule.list?.source).toBe("ip,si");
    });
    expect(host.validationAt("Data", 1, 1)?.list.source).toBe("ip,si");
    expect(host.validationAt("Data", 0, 1)).toBeNull();
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Data");
      sheet.getRange("B2").dataValidation.rule = { list: { inCellDropDown: false, source: "m" } };
      const across = sheet.getRange("A1:B9").dataValidation.load("rule");
      await context.sync();
      expect(across.rule).toEqual({});
    });
    expect(host.validationAt("Data", 1, 1)?.list.source).toBe("m");
    expect(host.validationAt("Data", 2, 1)?.list.inCellDropDown).toBe(true);
  });

  it("other than lists are refused", async () => {
    openDesk();
    const rules: unknown[] = [
      { wholeNumber: { formula1: 1, operator: "GreaterThan" } },
      {},
      { list: { inCellDropDown: true, source: "" } },
    ];
    const codes: string[] = [];
    for (const rule of rules) {
      const { code } = await refusal(async (context) => {
        const { dataValidation } = context.workbook.worksheets.getItem("Data").getRange("A1");
        dataValidation.rule = rule as Excel.DataValidationRule;
      });
      codes.push(code);
    }
    expect(codes).toEqual(["UnsupportedOperation", "InvalidArgument", "InvalidArgument"]);
  });
});
