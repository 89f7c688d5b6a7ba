import { describe, expect, it } from "vitest";
import { openDesk, refusal, rows } from "./desk";

type Ask = (context: Excel.RequestContext) => unknown;

describe("What the host does not offer", () => {
  const asks: Readonly<Record<string, readonly [ask: Ask, location: string]>> = {
    "a property": [
      (context) => context.workbook.worksheets.getActiveWorksheet().load("standardWidth"),
      "Worksheet.load",
    ],
    "an object": [
      (context) => context.workbook.worksheets.getActiveWorksheet().shapes,
      "Worksheet.shapes",
    ],
    "a method": [
      (context) => context.workbook.worksheets.getActiveWorksheet().getRange("A1").insert("Down"),
      "Range.insert",
    ],
    "a method without a result": [
      (context) => context.workbook.worksheets.getActiveWorksheet().getRange("A1").group("ByRows"),
      "Range.group",
    ],
    "setting a property": [
      (context) => {
        context.workbook.worksheets.getActiveWorksheet().standardWidth = 9;
      },
      "Worksheet.standardWidth",
    ],
    "setting a property that is only read": [
      (context) => {
        context.workbook.worksheets.getActiveWorksheet().position = 3;
      },
      "Worksheet.position",
    ],
    "an event": [
      (context) => context.workbook.worksheets.onFormatChanged.add(async () => {}),
      "WorksheetCollection._RegisterFormatChangedEvent",
    ],
    "an object below a loaded one": [
      (context) => context.workbook.worksheets.load("items/shapes/items"),
      "WorksheetCollection.load",
    ],
  };

  it.each(Object.entries(asks))("answers %s with ApiNotFound", async (_, [ask, location]) => {
    openDesk();
    const { code, debugInfo } = await refusal(async (context) => ask(context));
    expect([code, debugInfo.errorLocation]).toEqual(["ApiNotFound", location]);
    expect(debugInfo.statement).toBeTruthy();
  });
});

describe("Limits", () => {
  it("refuse a request of more than 5 MB, without doing any of it", async () => {
    const host = openDesk();
    const { code } = await refusal(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Data");
      sheet.getRange("A1").values = [["first"]];
      for (let row = 2; row < 200; row++) sheet.getRange(`A${row}`).values = [["x".repeat(30_000)]];
    });
    expect(code).toBe("RequestPayloadSizeLimitExceeded");
    expect(host.value("Data", 0, 0)).toBeNull();
  });

  it("refuse an answer of more than 5 MB, though its writes are done", async () => {
    const text = "\u20ac".repeat(10_000);
    const host = openDesk({ Data: rows(...Array.from({ length: 200 }, () => [text])) });
    const { code } = await refusal(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Data");
      sheet.getRange("B1").values = [["done"]];
      sheet.getRange("A1:A200").load("values");
    });
    expect(code).toBe("ResponsePayloadSizeLimitExceeded");
    expect(host.value("Data", 0, 1)).toBe("done");
    await Excel.run(async (context) => {
      const half = context.workbook.worksheets.getItem("Data").getRange("A1:A100").load("values");
      await context.sync();
      expect(half.values).toHaveLength(100);
    });
  });
});

describe("While a cell is being edited", () => {
  it("requests fail as Excel fails them", async () => {
    const host = openDesk();
    host.beginEdit();
    const { code } = await refusal(async (context) => {
      context.workbook.load("readOnly");
      await context.sync();
    });
    expect([code, host.isEditing]).toEqual(["InvalidOperationInCellEditMode", true]);
    host.endEdit();
    await Excel.run(async (context) => {
      context.workbook.load("readOnly");
      await context.sync();
      expect(context.workbook.readOnly).toBe(false);
    });
  });

  it("requests wait when they asked to", async () => {
    const host = openDesk();
    host.beginEdit();
    const order: string[] = [];
    const run = Excel.run({ delayForCellEdit: true }, async (context) => {
      const cell = context.workbook.worksheets.getItem("Data").getRange("A1").load("values");
      await context.sync();
      order.push(String(cell.values[0]?.[0]));
    });
    await new Promise((resolve) => setTimeout(resolve, 30));
    order.push("entered");
    host.userEnters("Data", 0, 0, "typed");
    host.endEdit();
    await run;
    expect(order).toEqual(["entered", "typed"]);
  });
});
