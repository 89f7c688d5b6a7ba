import { describe, expect, it } from "vitest";
import { openDesk, refusal, rows } from "./desk";

describe("Workbook and application", () => {
  it("let formulas wait where calculation is manual, and accept what speeds Excel up", async () => {
    openDesk({ Data: rows([2, "=A1*3"]) });
    await Excel.run(async (context) => {
      const { application } = context.workbook;
      application.calculationMode = "Manual";
      application.suspendApiCalculationUntilNextSync();
      application.calculate("Full");
      application.load("calculationMode");
      const cell = context.workbook.worksheets.getItem("Data").getRange("B1").load("values");
      await context.sync();
      expect(application.calculationMode).toBe("Manual");
      expect(cell.values).toEqual([[6]]);
      const sheet = context.workbook.worksheets.getItem("Data");
      const read = async () => {
        const cells = sheet.getRange("A1:C1").load("values");
        await context.sync();
        return cells.values;
      };
      // A formula is worked out when it is typed; those there before wait.
      sheet.getRange("A1").values = [[5]];
      sheet.getRange("C1").formulas = [["=A1+B1"]];
      expect(await read()).toEqual([[5, 6, 11]]);
      application.calculate("Recalculate");
      expect(await read()).toEqual([[5, 15, 20]]);
      sheet.getRange("A1").values = [[1]];
      application.calculationMode = "Automatic";
      expect(await read()).toEqual([[1, 3, 4]]);
    });
    const { code } = await refusal(async (context) => {
      context.workbook.application.calculationMode = "Sometimes" as "Manual";
    });
    expect(code).toBe("InvalidArgument");
  });

  it("know the selected cells and the active one", async () => {
    const host = openDesk({ Data: [], Other: [] });
    host.select("Other", "B2:C4");
    await Excel.run(async (context) => {
      const cell = context.workbook.getActiveCell().load("address");
      const sheet = context.workbook.worksheets.getActiveWorksheet().load("name");
      await context.sync();
      expect(cell.address).toBe("Other!B2");
      expect(sheet.name).toBe("Other");
    });
  });

  it("refuse new and deleted sheets while the structure is protected", async () => {
    const host = openDesk({ Data: [], Other: [] });
    await Excel.run(async (context) => {
      const { protection } = context.workbook;
      protection.protect();
      protection.load("protected");
      await context.sync();
      expect(protection.protected).toBe(true);
    });
    const added = await refusal(async (context) => context.workbook.worksheets.add("New"));
    const gone = await refusal(async (context) =>
      context.workbook.worksheets.getItem("Other").delete(),
    );
    const twice = await refusal(async (context) => context.workbook.protection.protect());
    const secret = await refusal(async (context) => context.workbook.protection.unprotect("x"));
    expect([added.code, gone.code, twice.code, secret.code]).toEqual([
      "AccessDenied",
      "AccessDenied",
      "InvalidOperation",
      "UnsupportedOperation",
    ]);
    await Excel.run(async (context) => context.workbook.protection.unprotect());
    await Excel.run(async (context) => context.workbook.worksheets.getItem("Other").delete());
    expect(host.sheets.map(({ name }) => name)).toEqual(["Data"]);
  });
});

describe("Worksheets", () => {
  it("are found by name whatever the case, and by id", async () => {
    openDesk({ One: [], Two: [], Three: [] });
    await Excel.run(async (context) => {
      const { worksheets } = context.workbook;
      const two = worksheets.getItem("TWO").load("id,name,position");
      await context.sync();
      const byId = worksheets.getItem(two.id).load("name");
      await context.sync();
      expect([two.name, two.position, byId.name]).toEqual(["Two", 1, "Two"]);
    });
  });

  it("are added at the end, under a name of their own choice where none is given", async () => {
    const host = openDesk();
    await Excel.run(async (context) => {
      const named = context.workbook.worksheets.add("Findings").load("name,position");
      const free = context.workbook.worksheets.add().load("name,visibility");
      await context.sync();
      expect([named.name, named.position]).toEqual(["Findings", 1]);
      expect([free.name, free.visibility]).toEqual(["Sheet3", "Visible"]);
    });
    expect(host.sheets).toHaveLength(3);
  });

  it("are refused under a name that is taken or not possible", async () => {
    openDesk();
    const taken = await refusal(async (context) => context.workbook.worksheets.add("data"));
    const bad = await refusal(async (context) => context.workbook.worksheets.add("a/b"));
    const long = await refusal(async (context) => context.workbook.worksheets.add("x".repeat(32)));
    expect([taken.code, bad.code, long.code]).toEqual([
      "ItemAlreadyExists",
      "InvalidArgument",
      "InvalidArgument",
    ]);
  });

  it("go when deleted, but the last visible one stays", async () => {
    const host = openDesk({ Data: [], Other: [] });
    await Excel.run(async (context) => context.workbook.worksheets.getItem("Data").delete());
    expect(host.activeSheet).toBe("Other");
    const { code } = await refusal(async (context) =>
      context.workbook.worksheets.getItem("Other").delete(),
    );
    expect(code).toBe("InvalidOperation");
  });

  it("of a name used before start empty", async () => {
    const host = openDesk({ Data: rows([1]), Findings: rows(["old"]) });
    await Excel.run(async (context) => {
      const { worksheets } = context.workbook;
      worksheets.getItem("Findings").delete();
      worksheets.add("Findings").getRange("B1").values = [["new"]];
      await context.sync();
    });
    expect([host.value("Findings", 0, 0), host.value("Findings", 0, 1)]).toEqual([null, "new"]);
    expect(host.workbook.sheet("Findings")?.cell(0, 1)?.value).toBe("new");
  });

  it("are no longer usable once deleted", async () => {
    openDesk({ Data: [], Other: [] });
    const { code } = await refusal(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Other");
      const range = sheet.getRange("A1");
      sheet.delete();
      range.load("values");
      await context.sync();
    });
    expect(code).toBe("ItemNotFound");
  });

  it("take another name unless something refers to them by the old one", async () => {
    const host = openDesk({ Data: rows([1]), Sum: rows(["=Data!A1"]) });
    const { code } = await refusal(async (context) => {
      context.workbook.worksheets.getItem("Data").name = "Readings";
    });
    expect(code).toBe("UnsupportedOperation");
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Sum").name = "Total";
    });
    expect(host.sheets.map(({ name }) => name)).toEqual(["Data", "Total"]);
    host.userEnters("Data", 0, 0, "7");
    expect(host.value("Total", 0, 0)).toBe(7);
    const taken = await refusal(async (context) => {
      context.workbook.worksheets.getItem("Total").name = "DATA";
    });
    expect(taken.code).toBe("ItemAlreadyExists");
  });

  it("are shown, hidden and activated", async () => {
    const host = openDesk({ Data: [], Other: [] });
    await Excel.run(async (context) => {
      const data = context.workbook.worksheets.getItem("Data");
      data.visibility = "VeryHidden";
      data.load("visibility");
      context.workbook.worksheets.getItem("Other").activate();
      await context.sync();
      expect(data.visibility).toBe("VeryHidden");
    });
    expect(host.activeSheet).toBe("Other");
    const hidden = await refusal(async (context) =>
      context.workbook.worksheets.getItem("Data").activate(),
    );
    const last = await refusal(async (context) => {
      context.workbook.worksheets.getItem("Other").visibility = "Hidden";
    });
    expect([hidden.code, last.code]).toEqual(["InvalidOperation", "InvalidOperation"]);
  });

  it("give the cells that hold something", async () => {
    openDesk({ Data: rows([], [null, null, 1], [null, "x"]), Empty: [] });
    await Excel.run(async (context) => {
      const { worksheets } = context.workbook;
      const used = worksheets.getItem("Data").getUsedRange().load("address");
      const none = worksheets.getItem("Empty").getUsedRangeOrNullObject(true);
      const corner = worksheets.getItem("Empty").getUsedRange().load("address");
      // A look alone counts where values are not asked for by themselves.
      worksheets.getItem("Data").getRange("E5").format.fill.color = "#FFEE00";
      const looks = worksheets.getItem("Data").getUsedRange().load("address");
      const valued = worksheets.getItem("Data").getUsedRange(true).load("address");
      await context.sync();
      expect(used.address).toBe("Data!B2:C3");
      expect([looks.address, valued.address]).toEqual(["Data!B2:E5", "Data!B2:C3"]);
      expect(none.isNullObject).toBe(true);
      expect(corner.address).toBe("Empty!A1");
    });
  });

  it("freeze rows, and let go of them", async () => {
    const host = openDesk();
    for (const rows of [2, 0]) {
      await Excel.run(async (context) => {
        const { freezePanes } = context.workbook.worksheets.getItem("Data");
        freezePanes.freezeRows(rows);
        await context.sync();
      });
      expect(host.sheets[0]?.frozenRows).toBe(rows);
    }
  });
});
