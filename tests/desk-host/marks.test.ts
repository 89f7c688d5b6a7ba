import { describe, expect, it } from "vitest";
import { type ConditionalFormat, Workbook } from "../../src/workbook";
import { hostOf, openDesk, refusal, rows } from "./desk";

function onData(action: (sheet: Excel.Worksheet) => void): Promise<void> {
  return Excel.run(async (context) => action(context.workbook.worksheets.getItem("Data")));
}

/** A desk whose file has conditional formats, highest priority first. */
function withFormats(cells: readonly (readonly number[])[], formats: readonly ConditionalFormat[]) {
  const workbook = Workbook.create();
  workbook.addSheet("Data", { rows: rows(...cells) });
  workbook.sheet("Data")?.arrange({ conditionalFormats: formats });
  return hostOf(Workbook.open(workbook.save()));
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
    const rules: [ConditionalFormat["operator"], string[], number[]][] = [
      ["greaterThan", ["2"], [2, 3]],
      ["lessThanOrEqual", ["2"], [0, 1]],
      ["between", ["3", "2"], [1, 2]],
      ["notBetween", ["2", "3"], [0, 3]],
      ["equal", ["$A$1+1"], [1]],
      ["notEqual", ["A1"], []],
    ];
    for (const [operator, formulas, expected] of rules) {
      const look = { fill: "FFFF00" };
      const host = withFormats(
        [[1, 2, 3, 4]],
        [{ ref: "A1:D1", operator, formulas, look, stopIfTrue: false }],
      );
      const marked = [0, 1, 2, 3].filter((col) => host.marksAt("Data", 0, col) !== null);
      expect([operator, marked]).toEqual([operator, expected]);
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
    for (const stopIfTrue of [false, true]) {
      const always = { ref: "A1:A2", operator: null, formulas: ["TRUE"] };
      const host = withFormats(
        [[1]],
        [
          { ...always, look: { fill: "111111" }, stopIfTrue },
          { ...always, look: { bold: true }, stopIfTrue: false },
        ],
      );
      await onData((sheet) => {
        const { custom } = sheet.getRange("A1:A2").conditionalFormats.add("Custom");
        custom.rule.formula = "=TRUE";
        custom.format.fill.color = "#222222";
      });
      const look = { fill: "#222222", ...(stopIfTrue ? {} : { bold: true }) };
      expect(host.marksAt("Data", 0, 0)).toEqual(look);
    }
  });

  it("are found again, read, and deleted one by one or from a range", async () => {
    const host = openDesk();
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Data");
      const added = sheet.getRanges("A1:B2,D4").conditionalFormats.add("Custom");
      added.custom.rule.formula = "=TRUE";
      added.custom.format.fill.color = "#FFCC00";
      added.load("id,type");
      const other = sheet.getRange("A1").conditionalFormats.add("Custom");
      other.load("id");
      await context.sync();
      const { conditionalFormats } = sheet.getRange();
      const same = conditionalFormats.getItem(added.id);
      same.custom.rule.load("formula");
      same.custom.format.fill.load("color");
      same.custom.format.font.load("color,bold,italic");
      const none = conditionalFormats.getItemOrNullObject("{none}");
      const first = conditionalFormats.getItem(other.id).load("type");
      const cells = same.getRanges().load("address");
      await context.sync();
      expect([none.isNullObject, first.type]).toEqual([true, "Custom"]);
      expect(same.custom.rule.formula).toBe("=TRUE");
      expect(same.custom.format.fill.color).toBe("#FFCC00");
      expect(same.custom.format.font.bold).toBeNull();
      expect(cells.address).toBe("Data!A1:B2,Data!D4");
      first.delete();
      sheet.getRange("B1:D4").clear("Formats");
      conditionalFormats.load("items/id");
      await context.sync();
      expect(conditionalFormats.items).toHaveLength(1);
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
      (formats) => formats.getItem("{none}"),
      (formats) => formats.add("CellValue"),
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
      "ItemNotFound",
      "UnsupportedOperation",
      "InvalidArgument",
      "InvalidArgument",
    ]);
  });
});
