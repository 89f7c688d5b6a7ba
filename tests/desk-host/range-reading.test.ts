import { describe, expect, it } from "vitest";
import { Workbook } from "../../src/workbook";
import { hostOf, openDesk, refusal, rows } from "./desk";

/** Runs a read on the first sheet. */
function onSheet<T>(
  read: (sheet: Excel.Worksheet, sync: () => Promise<void>) => Promise<T>,
): Promise<T> {
  return Excel.run((context) =>
    read(context.workbook.worksheets.getActiveWorksheet(), () => context.sync()),
  );
}

describe("Reading a range", () => {
  it("gives values, formulas, texts and kinds of values cell by cell", async () => {
    const workbook = Workbook.create();
    const day = workbook.addStyle({ numberFormat: "yyyy-mm-dd" });
    workbook.addSheet("Data", {
      rows: [
        [{ value: "a" }, { value: 1.5 }, { value: true }, { value: null }],
        [
          { value: { error: "#N/A" } },
          { value: 46_000, style: day },
          { formula: "B1*2", value: 3 },
          { formula: "_xldudf_FANROW_NOT_THERE(B1)", value: { error: "#NAME?" } },
        ],
      ],
    });
    hostOf(workbook);
    await onSheet(async (sheet, sync) => {
      const range = sheet.getRange("A1:D2").load("values,formulas,text,valueTypes,numberFormat");
      await sync();
      expect(range.values).toEqual([
        ["a", 1.5, true, ""],
        ["#N/A", 46_000, 3, "#NAME?"],
      ]);
      expect(range.formulas[1]?.slice(0, 3)).toEqual(["#N/A", 46_000, "=B1*2"]);
      expect(range.text).toEqual([
        ["a", "1.5", "TRUE", ""],
        ["#N/A", "2025-12-09", "3", "#NAME?"],
      ]);
      expect(range.valueTypes).toEqual([
        ["String", "Double", "Boolean", "Empty"],
        ["Error", "Double", "Double", "Error"],
      ]);
      expect(range.numberFormat[1]).toEqual(["General", "yyyy-mm-dd", "General", "General"]);
    });
  });

  it("spells our functions and those of later versions as a user types them", async () => {
    const workbook = Workbook.create();
    const stored = [
      "_xldudf_FANROW_ROUND_AREA(A1)",
      'IF(A1="_xlfn.IFS(",_xlfn.XLOOKUP(A1,B1:B2,C1:C2),"")',
      "_xlfn.IFS(A1>1,'a _xlfn.b'!A1)",
      "SUM(_xlfn.ANCHORARRAY(A1))",
    ];
    workbook.addSheet("Data", {
      rows: stored.map((formula) => [null, null, null, { formula, value: 0 }]),
    });
    hostOf(workbook);
    await onSheet(async (sheet, sync) => {
      const range = sheet.getRange("D1:D4").load("formulas");
      await sync();
      expect(range.formulas.flat()).toEqual([
        "=FANROW.ROUND_AREA(A1)",
        '=IF(A1="_xlfn.IFS(",XLOOKUP(A1,B1:B2,C1:C2),"")',
        "=IFS(A1>1,'a _xlfn.b'!A1)",
        "=SUM(A1#)",
      ]);
    });
  });

  it("tells size, place and address, with the name of the sheet in quotes where needed", async () => {
    openDesk({ "Box list": [] });
    await onSheet(async (sheet, sync) => {
      const range = sheet.getRange("$B$3:d7").load();
      const column = sheet.getRange("B:C").load("address");
      const row = sheet.getRange("4:4").load("address,values");
      await sync();
      expect(range.address).toBe("'Box list'!B3:D7");
      expect([range.rowIndex, range.columnIndex, range.rowCount, range.columnCount]).toEqual([
        2, 1, 5, 3,
      ]);
      expect([column.address, row.address]).toEqual(["'Box list'!B:C", "'Box list'!4:4"]);
      // A range without an end has no values.
      expect(row.values).toBeNull();
    });
  });

  it("reaches other ranges from a range", async () => {
    openDesk({ Data: rows([1, 2, 3], [null, 5], [7]) });
    await onSheet(async (sheet, sync) => {
      const from = sheet.getRange("B2:C4");
      const others = {
        cell: from.getCell(1, 1),
        resized: from.getResizedRange(1, -1),
        sharedOrNone: from.getIntersectionOrNullObject("A1:B2"),
        used: from.getUsedRange(),
        byIndexes: sheet.getRangeByIndexes(4, 2, 2, 3),
      };
      for (const range of Object.values(others)) range.load("address");
      const apart = from.getIntersectionOrNullObject("A1");
      const unused = sheet.getRange("D5:E6").getUsedRangeOrNullObject();
      await sync();
      const addresses = Object.entries(others).map(([name, range]) => [
        name,
        range.address.replace("Data!", ""),
      ]);
      expect(Object.fromEntries(addresses)).toEqual({
        cell: "C3",
        resized: "B2:B5",
        sharedOrNone: "B2",
        used: "B2",
        byIndexes: "C5:E6",
      });
      expect([apart.isNullObject, unused.isNullObject]).toEqual([true, true]);
    });
  });

  it("refuses places outside the sheet or the range", async () => {
    openDesk({ Data: [], Other: [] });
    const codes: string[] = [];
    const asks: ((sheet: Excel.Worksheet) => unknown)[] = [
      (sheet) => sheet.getRange("A1").getCell(-1, 0),
      (sheet) => sheet.getRange("A1:B2").getResizedRange(-2, 0),
      (sheet) => sheet.getRange("XFE1"),
      (sheet) => sheet.getRange("A1048577"),
      (sheet) => sheet.getRange("A1,C3"),
      (sheet) => sheet.getRange("Other!A1"),
      (sheet) => sheet.getRange("nonsense!!"),
      (sheet) => sheet.getRange("NoSuchName"),
      (sheet) => sheet.getRange(`A1:${"B".repeat(8192)}`),
      (sheet) => sheet.getRangeByIndexes(0, 0, 0, 1),
    ];
    for (const ask of asks) {
      const { code } = await refusal(async (context) =>
        ask(context.workbook.worksheets.getItem("Data")),
      );
      codes.push(code);
    }
    expect(codes).toEqual(asks.map(() => "InvalidArgument"));
  });

  it("tells hidden lines, merges and filters of the file", async () => {
    const { strToU8 } = await import("fflate");
    const { pack, parts, worksheet } = await import("../workbook/packages");
    const sheet = worksheet(
      '<cols><col min="2" max="2" hidden="1" width="9"/></cols><sheetData>' +
        '<row r="1"><c r="A1"><v>1</v></c></row><row r="2" hidden="1"><c r="A2"><v>2</v></c></row></sheetData>' +
        '<autoFilter ref="A1:B2"><filterColumn colId="0"/></autoFilter>' +
        '<mergeCells><mergeCell ref="D1:E1"/></mergeCells>',
    );
    hostOf(Workbook.open(pack(parts(strToU8(sheet) as unknown as string))));
    await onSheet(async (worksheet, sync) => {
      const both = worksheet.getRange("A1:B2").load("rowHidden,columnHidden");
      const second = worksheet.getRange("B2").load("rowHidden,columnHidden");
      const merged = worksheet.getRange("A1:F9").getMergedAreasOrNullObject().load("address");
      const none = worksheet.getRange("A1").getMergedAreasOrNullObject();
      worksheet.autoFilter.load("isDataFiltered");
      await sync();
      expect([both.rowHidden, both.columnHidden]).toEqual([null, null]);
      expect([second.rowHidden, second.columnHidden]).toEqual([true, true]);
      expect([merged.address, none.isNullObject]).toEqual(["Data!D1:E1", true]);
      expect(worksheet.autoFilter.isDataFiltered).toBe(true);
    });
  });

  it("tells where a formula spills", async () => {
    const three = rows([null, null, 1], [null, null, 2], [null, null, 3]);
    const host = openDesk({ Data: three });
    host.userEnters("Data", 0, 0, "=C1:C3*2");
    await onSheet(async (sheet, sync) => {
      const range = sheet.getRange("A1:A3").load("values,formulas");
      await sync();
      expect(range.values.flat()).toEqual([2, 4, 6]);
      expect(range.formulas.flat()).toEqual(["=C1:C3*2", 4, 6]);
    });
  });

  it("takes several ranges of a sheet together", async () => {
    openDesk({ Data: [] });
    await onSheet(async (sheet, sync) => {
      const areas = sheet.getRanges("A1:B2,D4").load("address");
      await sync();
      expect(areas.address).toBe("Data!A1:B2,Data!D4");
    });
  });
});
