import { describe, expect, it } from "vitest";
import { openDesk, rows, settled } from "./desk";

/** What handlers were told, without the parts that are functions. */
type Told = Record<string, unknown>;

/** Registers for events of all sheets and notes what comes. */
async function listen(): Promise<{
  readonly told: Told[];
  readonly stop: () => Promise<void>;
}> {
  const told: Told[] = [];
  const results = await Excel.run(async (context) => {
    const { worksheets } = context.workbook;
    const note = async (args: object) => {
      told.push(JSON.parse(JSON.stringify(args)) as Told);
    };
    const added = [
      worksheets.onChanged.add(note),
      worksheets.onSelectionChanged.add(note),
      worksheets.onActivated.add(note),
    ];
    await context.sync();
    return added as OfficeExtension.EventHandlerResult<unknown>[];
  });
  return { told, stop: () => remove(results) };
}

/** Takes handlers away, which would answer the events of later tests too. */
async function remove(handlers: readonly OfficeExtension.EventHandlerResult<unknown>[]) {
  const [first] = handlers;
  await Excel.run(first?.context as OfficeExtension.ClientRequestContext, async (context) => {
    for (const handler of handlers) handler.remove();
    await context.sync();
  });
}

describe("Events", () => {
  it("tell which cell was changed, by whom and from what to what", async () => {
    const host = openDesk({ Data: rows([1, "=A1*2"]) });
    const { told, stop } = await listen();
    host.userEnters("Data", 0, 0, "5");
    await settled();
    expect(told).toEqual([
      {
        type: "WorksheetChanged",
        changeType: "RangeEdited",
        source: "Local",
        triggerSource: "Unknown",
        worksheetId: expect.stringMatching(/^\{/) as string,
        address: "A1",
        details: {
          valueBefore: 1,
          valueAfter: 5,
          valueTypeBefore: "Double",
          valueTypeAfter: "Double",
        },
      },
    ]);
    told.length = 0;
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Data").getRange("C1:D2").values = [
        [1, 2],
        [3, 4],
      ];
    });
    await settled();
    expect(
      told.map(({ address, triggerSource, details }) => [address, triggerSource, details]),
    ).toEqual([["C1:D2", "ThisLocalAddin", undefined]]);
    told.length = 0;
    await stop();
    host.userEnters("Data", 0, 0, "6");
    await settled();
    expect(told).toEqual([]);
  });

  it("of one sheet are told for that sheet alone", async () => {
    const host = openDesk({ Data: [], Other: [] });
    const seen: string[] = [];
    const handlers = await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Other");
      const added = [
        sheet.onChanged.add(async ({ address }) => {
          seen.push(`changed ${address}`);
        }),
        sheet.onSelectionChanged.add(async ({ address }) => {
          seen.push(`selected ${address}`);
        }),
        sheet.onActivated.add(async () => {
          seen.push("activated");
        }),
      ];
      await context.sync();
      return added as OfficeExtension.EventHandlerResult<unknown>[];
    });
    host.userEnters("Data", 0, 0, "1");
    host.userEnters("Other", 0, 0, "1");
    host.select("Other", "B2:C3");
    host.select("Data", "A1");
    await settled();
    expect(seen).toEqual(["changed A1", "activated", "selected B2:C3"]);
    seen.length = 0;
    await remove(handlers);
    host.userEnters("Other", 0, 0, "2");
    host.activate("Other");
    await settled();
    expect(seen).toEqual([]);
  });

  it("tell of sheets activated, by hand or where another went", async () => {
    openDesk();
    const { told } = await listen();
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.add("New");
      sheet.activate();
      await context.sync();
      sheet.delete();
    });
    await settled();
    expect(told.map(({ type }) => type)).toEqual([
      "WorksheetActivated",
      "WorksheetSelectionChanged",
      "WorksheetActivated",
    ]);
  });

  it("come for undone edits too", async () => {
    const host = openDesk();
    host.userEnters("Data", 2, 0, "1");
    const { told } = await listen();
    host.undo();
    await settled();
    expect(told.map(({ address }) => address)).toEqual(["A3"]);
  });
});
