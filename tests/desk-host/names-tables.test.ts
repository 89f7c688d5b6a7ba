import { describe, expect, it } from "vitest";
import { Workbook } from "../../src/workbook";
import { pack, parts, worksheet } from "../workbook/packages";
import { hostOf, openDesk, refusal, rows } from "./desk";

describe("Names", () => {
  it("are added for ranges and formulas, read and removed", async () => {
    const host = openDesk({ Data: rows([3, 4]) });
    host.userEnters("Data", 1, 0, "=SUM(Readings)+Twice");
    expect(host.value("Data", 1, 0)).toEqual(expect.objectContaining({ error: "#NAME?" }));
    await Excel.run(async (context) => {
      const { names, worksheets } = context.workbook;
      const sheet = worksheets.getItem("Data");
      names.add("Readings", sheet.getRange("A1:B1"));
      names.add("Twice", "=Data!$A$1*2");
      sheet.names.add("Here", "=7");
      await context.sync();
      const range = names.getItem("READINGS").load("name,formula");
      const local = sheet.names.getItemOrNullObject("Here").load("formula");
      const none = names.getItemOrNullObject("Here");
      await context.sync();
      expect([range.name, range.formula]).toEqual(["Readings", "=Data!$A$1:$B$1"]);
      expect([local.formula, none.isNullObject]).toEqual(["=7", true]);
    });
    expect(host.value("Data", 1, 0)).toBe(13);
    await Excel.run(async (context) => {
      const byName = context.workbook.worksheets.getItem("Data").getRange("Readings");
      byName.load("address");
      context.workbook.names.load("items/name");
      await context.sync();
      expect(byName.address).toBe("Data!A1:B1");
      expect(context.workbook.names.items.map(({ name }) => name)).toEqual(["Readings", "Twice"]);
      context.workbook.names.getItem("Twice").delete();
    });
    await Excel.run(async (context) => {
      const gone = context.workbook.names.getItemOrNullObject("Twice");
      await context.sync();
      expect(gone.isNullObject).toBe(true);
    });
  });

  it("are refused when taken, not possible, or not there", async () => {
    openDesk();
    const asks: ((names: Excel.NamedItemCollection) => unknown)[] = [
      (names) => {
        names.add("Limit", "=1");
        names.add("LIMIT", "=2");
      },
      (names) => names.add("A1", "=1"),
      (names) => names.add("two words", "=1"),
      (names) => names.add("Text", "no formula"),
      (names) => names.getItem("Nothing").load("name"),
    ];
    const codes: string[] = [];
    for (const ask of asks) {
      const { code } = await refusal(async (context) => ask(context.workbook.names));
      codes.push(code);
    }
    expect(codes).toEqual([
      "ItemAlreadyExists",
      "InvalidArgument",
      "InvalidArgument",
      "InvalidArgument",
      "ItemNotFound",
    ]);
  });

  it("of the file are read and removed, those of the format itself stay", async () => {
    const book = `<workbook xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"><sheets><sheet name="Data" sheetId="1" r:id="rId1"/></sheets><definedNames><definedName name="Limit">Data!$A$1</definedName><definedName name="_xlnm.Print_Area" localSheetId="0">Data!$A$1</definedName></definedNames></workbook>`;
    const file = pack(parts(worksheet("<sheetData/>"), { "xl/workbook.xml": book }));
    const host = hostOf(Workbook.open(file));
    await Excel.run(async (context) => {
      context.workbook.names.load("items/name,items/formula");
      await context.sync();
      expect(context.workbook.names.items.map(({ formula }) => formula)).toEqual(["=Data!$A$1"]);
    });
    await Excel.run(async (context) => context.workbook.names.getItem("Limit").delete());
    const { names } = Workbook.open(host.save());
    expect(names.map(({ name }) => name)).toEqual(["_xlnm.Print_Area"]);
  });

  it("that were added are in the saved copy, with what is local", async () => {
    const host = openDesk({ Data: rows([3, 4]) });
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Data");
      context.workbook.names.add("Readings", sheet.getRange("A1:B1"));
      sheet.names.add("Here", "=7");
    });
    expect(Workbook.open(host.save()).names).toEqual([
      { name: "Readings", formula: "Data!$A$1:$B$1", sheet: null },
      { name: "Here", formula: "7", sheet: "Data" },
    ]);
  });
});

describe("Tables", () => {
  it("are listed and read", async () => {
    const table = `<table xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" id="1" name="T" displayName="Fans" ref="A1:B3" totalsRowCount="0"><tableColumns count="2"><tableColumn id="1" name="Fan"/><tableColumn id="2" name="Flow"/></tableColumns></table>`;
    const relationship = `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/table" Target="../tables/table1.xml"/></Relationships>`;
    const sheet = worksheet(
      '<sheetData><row r="1"><c r="A1" t="str"><v>Fan</v></c></row></sheetData><tableParts count="1"><tablePart r:id="rId1"/></tableParts>',
    );
    const more = {
      "xl/tables/table1.xml": table,
      "xl/worksheets/_rels/sheet1.xml.rels": relationship,
    };
    hostOf(Workbook.open(pack(parts(sheet, more))));
    await Excel.run(async (context) => {
      const { tables, worksheets } = context.workbook;
      tables.load("items/name,items/id");
      const own = worksheets.getItem("Data").tables.getItem("fans");
      const whole = own.getRange().load("address");
      own.columns.load("items/name,items/index");
      const none = tables.getItemOrNullObject("Other");
      await context.sync();
      expect([tables.items.length, none.isNullObject]).toEqual([1, true]);
      expect(own.columns.items.map(({ name, index }) => [name, index])).toEqual([
        ["Fan", 0],
        ["Flow", 1],
      ]);
      const [only] = tables.items;
      expect(only?.name).toBe("Fans");
      expect(whole.address).toBe("Data!A1:B3");
    });
    const missing = await refusal(async (context) => context.workbook.tables.getItem("Other"));
    const heading = await refusal(async (context) => {
      context.workbook.worksheets.getItem("Data").getRange("A1").values = [["Tag"]];
    });
    expect([missing.code, heading.code]).toEqual(["ItemNotFound", "InvalidOperation"]);
  });

  it("are made of cells with headings, follow a renamed sheet, and go with their cells", async () => {
    openDesk({ Data: rows(["Area", "Double"], [3], [5]) });
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Data");
      const table = sheet.tables.add("A1:B3", true).load("name");
      sheet.getRange("B2:B3").formulas = [["=[@Area]*2"], ["=[@Area]*2"]];
      const values = sheet.getRange("B2:B3").load("values");
      sheet.name = "Fans";
      await context.sync();
      const whole = context.workbook.tables.getItem("Table1").getRange().load("address");
      await context.sync();
      expect([table.name, values.values, whole.address]).toEqual([
        "Table1",
        [[6], [10]],
        "Fans!A1:B3",
      ]);
    });
    const codes: string[] = [];
    for (const [address, headings] of [
      ["B3:C4", true],
      ["E1:F2", false],
    ] as const) {
      const { code } = await refusal(async (context) =>
        context.workbook.worksheets.getItem("Fans").tables.add(address, headings),
      );
      codes.push(code);
    }
    expect(codes).toEqual(["InvalidArgument", "UnsupportedOperation"]);
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Fans");
      sheet.tables.getItem("Table1").delete();
      sheet.tables.load("items/name");
      const used = sheet.getUsedRangeOrNullObject(true);
      await context.sync();
      expect([sheet.tables.items.length, used.isNullObject]).toEqual([0, true]);
    });
  });
});
