import { describe, expect, it } from "vitest";
import { openDesk, refusal, rows } from "./desk";

function onData(action: (sheet: Excel.Worksheet) => void): Promise<void> {
  return Excel.run(async (context) => action(context.workbook.worksheets.getItem("Data")));
}

describe("Conditional formats", () => {
  it("mark the cells for which their formula holds, and follow changes", async () => {
    const host = openDesk({ Data: rows([1, 0], [5, 0], [9, 0]) });
    await onData((sheet) => {
      const { custom } = sheet.getRange("A1:A3").conditionalFormats.add("Custom");
      custom.rule.formula = "=$A1>$B$1+4";
      custom.format.fill.color = "#F6CFC6";
      custom.format.font.color = "#6E1A0A";
      custom.format.font.bold = true;
      custom.format.font.italic = true;
    });
    const look = { fill: "#F6CFC6", color: "#6E1A0A", bold: true, italic: true };
    const marks = () => [0, 1, 2].map((row) => host.marksAt("Data", row, 0));
    expect(marks()).toEqual([null, look, look]);
    expect(host.marksAt("Data", 1, 1)).toBeNull();
    host.userEnters("Data", 0, 1, "3");
    expect(marks()).toEqual([null, null, look]);
  });

  it("compare a cell's own value", async () => {
    const host = openDesk({ Data: rows([1, 2, 3, 4]) });
    const marked = () => [0, 1, 2, 3].filter((col) => host.marksAt("Data", 0, col) !== null);
    const rules: [Excel.ConditionalCellValueRule, number[]][] = [
      [{ operator: "GreaterThan", formula1: "=2" }, [2, 3]],
      [{ operator: "LessThanOrEqual", formula1: "2" }, [0, 1]],
      [{ operator: "Between", formula1: "=3", formula2: "=2" }, [1, 2]],
      [{ operator: "NotBetween", formula1: "=2", formula2: "=3" }, [0, 3]],
      [{ operator: "EqualTo", formula1: "=$A$1+1" }, [1]],
      [{ operator: "NotEqualTo", formula1: "=A1" }, []],
    ];
    for (const [rule, expected] of rules) {
      await onData((sheet) => {
        sheet.getRange().conditionalFormats.clearAll();
        const { cellValue } = sheet.getRange("A1:D1").conditionalFormats.add("CellValue");
        cellValue.rule = rule;
        cellValue.format.fill.color = "#FFFF00";
      });
      expect([rule.operator, marked()]).toEqual([rule.operator, expected]);
    }
  });

  it("hold for every cell, for none, or for none yet", async () => {
    const host = openDesk();
    await onData((sheet) => {
      const mark = (address: string, formula: string) => {
        const { custom } = sheet.getRange(address).conditionalFormats.add("Custom");
        if (formula !== "") custom.rule.formula = formula;
        custom.format.fill.color = "red";
      };
      mark("A1", "=TRUE");
      mark("A2", '=ISTEXT("a mark")');
      mark("A3", "=FALSE");
      mark("A4", "");
      mark("A5", "=1/0");
    });
    const marked = [0, 1, 2, 3, 4].filter((row) => host.marksAt("Data", row, 0) !== null);
    expect(marked).toEqual([0, 1]);
  });

  it("come in an order: the one added last goes first, and may end the others", async () => {
    const host = openDesk();
    await onData((sheet) => {
      const add = (fill: string, stops: boolean) => {
        const format = sheet.getRange("A1:A2").conditionalFormats.add("Custom");
        format.custom.rule.formula = "=TRUE";
        format.custom.format.fill.color = fill;
        format.stopIfTrue = stops;
        return format;
      };
      add("#111111", false).custom.format.font.bold = true;
      add("#222222", false);
    });
    expect(host.marksAt("Data", 0, 0)).toEqual({ fill: "#222222", bold: true });
    await Excel.run(async (context) => {
      const formats = context.workbook.worksheets.getItem("Data").getRange("A1").conditionalFormats;
      formats.load("items/id,items/type,items/priority,items/stopIfTrue");
      await context.sync();
      expect(formats.items.map(({ priority, type }) => [priority, type])).toEqual([
        [0, "Custom"],
        [1, "Custom"],
      ]);
      (formats.items[0] as Excel.ConditionalFormat).stopIfTrue = true;
    });
    expect(host.marksAt("Data", 0, 0)).toEqual({ fill: "#222222" });
  });

  it("are found again, read, and deleted one by one or from a range", async () => {
    const host = openDesk();
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Data");
      const added = sheet.getRanges("A1:B2,D4").conditionalFormats.add("Custom");
      added.custom.rule.formula = "=TRUE";
      added.custom.format.fill.color = "#FFCC00";
      added.load("id,type");
      const value = sheet.getRange("A1").conditionalFormats.add("CellValue");
      value.cellValue.rule = { operator: "LessThan", formula1: "=5" };
      value.load("id");
      await context.sync();
      const { conditionalFormats } = sheet.getRange();
      const count = conditionalFormats.getCount();
      const same = conditionalFormats.getItem(added.id);
      same.custom.rule.load("formula");
      same.custom.format.fill.load("color");
      same.custom.format.font.load("color,bold,italic");
      const none = conditionalFormats.getItemOrNullObject("{none}");
      const first = conditionalFormats.getItem(value.id).load("type");
      const other = first.customOrNullObject;
      const rule = first.cellValueOrNullObject.load("rule");
      const range = first.getRange().load("address");
      const several = same.getRangeOrNullObject();
      await context.sync();
      expect([count.value, none.isNullObject, first.type]).toEqual([2, true, "CellValue"]);
      expect(same.custom.rule.formula).toBe("=TRUE");
      expect(same.custom.format.fill.color).toBe("#FFCC00");
      expect(same.custom.format.font.bold).toBeNull();
      expect([other.isNullObject, several.isNullObject]).toEqual([true, true]);
      expect([rule.rule.operator, range.address]).toEqual(["LessThan", "Data!A1"]);
      first.delete();
      sheet.getRange("B1:D4").conditionalFormats.clearAll();
      const left = conditionalFormats.getCount();
      await context.sync();
      expect(left.value).toBe(1);
    });
    const marked = [
      [0, 0],
      [1, 0],
      [0, 1],
      [3, 3],
    ].map(([row = 0, col = 0]) => host.marksAt("Data", row, col) !== null);
    expect(marked).toEqual([true, true, false, false]);
  });

  it("never change the cell's own format", async () => {
    const host = openDesk({ Data: rows([1]) });
    await onData((sheet) => {
      sheet.getRange("A1").format.fill.color = "#123456";
      const { custom } = sheet.getRange("A1").conditionalFormats.add("Custom");
      custom.rule.formula = "=TRUE";
      custom.format.fill.color = "#FF0000";
      custom.format.fill.clear();
    });
    expect(host.styleAt("Data", 0, 0).fill).toBe("123456");
    expect(host.marksAt("Data", 0, 0)).toEqual({});
  });

  it("of other types, and rules without sense, are refused", async () => {
    openDesk();
    const asks: ((formats: Excel.ConditionalFormatCollection) => unknown)[] = [
      (formats) => formats.add("IconSet"),
      (formats) => formats.add("Custom").cellValue.load("rule"),
      (formats) => formats.getItem("{none}"),
      (formats) => {
        formats.add("CellValue").cellValue.rule = { operator: "Between", formula1: "=1" };
      },
      ...["", "=SUM("].map((formula) => (formats: Excel.ConditionalFormatCollection) => {
        formats.add("Custom").custom.rule.formula = formula;
      }),
    ];
    const codes: string[] = [];
    for (const ask of asks) {
      const { code } = await refusal(async (context) =>
        ask(context.workbook.worksheets.getItem("Data").getRange("A1").conditionalFormats),
      );
      codes.push(code);
    }
    expect(codes).toEqual([
      "UnsupportedOperation",
      "InvalidArgument",
      "ItemNotFound",
      "InvalidArgument",
      "InvalidArgument",
      "InvalidArgument",
    ]);
  });
});
