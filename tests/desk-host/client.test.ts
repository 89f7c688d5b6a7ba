import { describe, expect, it } from "vitest";
import { openDesk, refusal, rows } from "./desk";

/** What the client library itself demands, and the ways of loading it offers. */
describe("The real client library on the host", () => {
  it("refuses to hand out a property that was not loaded", async () => {
    openDesk();
    const { code } = await refusal(async (context) => {
      const sheet = context.workbook.worksheets.getActiveWorksheet();
      sheet.load("name");
      await context.sync();
      return sheet.visibility;
    });
    expect(code).toBe("PropertyNotLoaded");
  });

  it("loads by text, by list, by object and all at once", async () => {
    openDesk({ Data: rows([1]) });
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Data");
      const byText = sheet.getRange("A1").load("values, address");
      const byList = sheet.getRange("A1").load(["values", "format/font/bold"]);
      const byObject = sheet
        .getRange("A1")
        .load({ values: true, format: { fill: { color: true } }, worksheet: { name: true } });
      const all = sheet.getRange("A1").load();
      await context.sync();
      expect(byText.address).toBe("Data!A1");
      expect(byList.format.font.bold).toBe(false);
      expect(byObject.format.fill.color).toBe("#FFFFFF");
      expect(byObject.worksheet.name).toBe("Data");
      expect([all.rowIndex, all.columnIndex, all.rowCount]).toEqual([0, 0, 1]);
      expect(byText.values).toEqual([[1]]);
    });
  });

  it("loads the items of a collection, from one place on and not more than asked for", async () => {
    openDesk({ One: [], Two: [], Three: [], Four: [] });
    await Excel.run(async (context) => {
      const all = context.workbook.worksheets.load("items/name");
      await context.sync();
      expect(all.items.map((sheet) => sheet.name)).toEqual(["One", "Two", "Three", "Four"]);
      const some = context.workbook.worksheets.load({ $top: 2, $skip: 1, name: true });
      await context.sync();
      expect(some.items.map((sheet) => sheet.name)).toEqual(["Two", "Three"]);
    });
  });

  it("uses an item of a collection in a later request", async () => {
    openDesk({ One: rows([1]), Two: rows([2]) });
    await Excel.run(async (context) => {
      const { worksheets } = context.workbook;
      worksheets.load("items/name,items/id");
      await context.sync();
      const cell = worksheets.items[1]?.getRange("A1").load("values");
      await context.sync();
      expect(cell?.values).toEqual([[2]]);
    });
  });

  it("tells objects that are not there apart, and ignores what is asked of them", async () => {
    const host = openDesk();
    await Excel.run(async (context) => {
      const none = context.workbook.worksheets.getItemOrNullObject("Nowhere");
      const below = none.getRange("A1").load("values");
      none.delete();
      none.getRange("B2").values = [[1]];
      await context.sync();
      expect(none.isNullObject).toBe(true);
      expect(below.isNullObject).toBe(true);
      none.delete();
      await context.sync();
    });
    expect(host.sheets.map(({ name }) => name)).toEqual(["Data"]);
  });

  it("keeps a tracked range for later runs and lets go of it", async () => {
    openDesk({ Data: rows([1, 2]) });
    const kept = await Excel.run(async (context) => {
      const range = context.workbook.worksheets.getItem("Data").getRange("B1");
      context.trackedObjects.add(range);
      await context.sync();
      return range;
    });
    await Excel.run(kept, async (context) => {
      kept.load("values");
      await context.sync();
      expect(kept.values).toEqual([[2]]);
      context.trackedObjects.remove(kept);
      await context.sync();
    });
    const { code } = await refusal(async () => {
      kept.load("values");
      await kept.context.sync();
    });
    expect(["InvalidReference", "InvalidObjectPath"]).toContain(code);
  });

  it("lets go of all ranges of a run when the run is over", async () => {
    openDesk();
    const count = () =>
      Excel.run(async (context) => {
        const root = context.workbook as unknown as {
          _GetReferenceCount(): OfficeExtension.ClientResult<number>;
        };
        const result = root._GetReferenceCount();
        await context.sync();
        return result.value;
      });
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getActiveWorksheet();
      for (const address of ["A1", "B2", "C3"]) sheet.getRange(address).load("values");
      await context.sync();
    });
    expect(await count()).toBe(0);
  });

  it("counts the round trips of a run", async () => {
    const host = openDesk();
    const before = host.requestCount;
    await Excel.run(async (context) => {
      context.workbook.load("readOnly");
      await context.sync();
      context.workbook.application.load("calculationMode");
      await context.sync();
    });
    expect(host.requestCount - before).toBe(2);
  });

  it("makes an object once however often a request mentions it", async () => {
    const host = openDesk();
    await Excel.run(async (context) => {
      const added = context.workbook.worksheets.add("New");
      added.load("name");
      added.getRange("A1").values = [[1]];
      added.load("id");
      await context.sync();
      expect(added.name).toBe("New");
    });
    expect(host.sheets.map(({ name }) => name)).toEqual(["Data", "New"]);
    expect(host.value("New", 0, 0)).toBe(1);
  });

  it("names the statement at fault and keeps what was done before it", async () => {
    const host = openDesk();
    const { code, debugInfo } = await refusal(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Data");
      sheet.getRange("A1").values = [["kept"]];
      sheet.getRange("A2:B2").values = [[1]];
      sheet.getRange("A3").values = [["never"]];
    });
    expect(code).toBe("InvalidArgument");
    expect(debugInfo.errorLocation).toBe("Range.values");
    expect(debugInfo.statement).toBe("range1.values = ...;");
    expect([host.value("Data", 0, 0), host.value("Data", 2, 0)]).toEqual(["kept", null]);
  });
});
