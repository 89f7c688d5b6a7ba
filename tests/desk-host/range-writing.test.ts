import { describe, expect, it } from "vitest";
import { openDesk, refusal, rows } from "./desk";

/** Writes on the sheet Data in one run. */
function write(action: (sheet: Excel.Worksheet) => void): Promise<void> {
  return Excel.run(async (context) => action(context.workbook.worksheets.getItem("Data")));
}

describe("Writing to a range", () => {
  it("recalculates what depends on it and keeps it for the file", async () => {
    const host = openDesk({ Data: rows([1, 2, "=A1+B1"]) });
    await write((sheet) => {
      sheet.getRange("A1:B1").values = [[10, 20]];
    });
    expect(host.value("Data", 0, 2)).toBe(30);
    const stored = host.workbook.sheet("Data");
    expect([stored?.cell(0, 0)?.value, stored?.cell(0, 2)?.value]).toEqual([10, 30]);
  });

  it("takes one value for all cells", async () => {
    const host = openDesk();
    await write((sheet) => {
      sheet.getRange("A1:B2").values = "x" as unknown as string[][];
    });
    expect([host.value("Data", 0, 0), host.value("Data", 1, 1)]).toEqual(["x", "x"]);
  });

  it("reads texts as if they were typed", async () => {
    const host = openDesk();
    await write((sheet) => {
      sheet.getRange("A1:G1").values = [["12", "'12", "5%", "TRUE", "=1+1", "2026-03-05", "#N/A"]];
    });
    const values = Array.from({ length: 7 }, (_, col) => host.value("Data", 0, col));
    expect(values).toEqual([12, "12", 0.05, true, 2, 46_086, { error: "#N/A" }]);
    expect([host.text("Data", 0, 2), host.text("Data", 0, 5)]).toEqual(["5%", "2026-03-05"]);
  });

  it("leaves cells alone for null and empties them for an empty text", async () => {
    const host = openDesk({ Data: rows([1, 2, 3]) });
    await write((sheet) => {
      sheet.getRange("A1:C1").values = [[null, "", 9]];
    });
    expect([0, 1, 2].map((col) => host.value("Data", 0, col))).toEqual([1, null, 9]);
  });

  it("keeps everything as text in cells formatted as text", async () => {
    const host = openDesk();
    await write((sheet) => {
      const range = sheet.getRange("A1:C1");
      range.numberFormat = [["@", "@", "@"]];
      range.values = [["12", "=1+1", 5]];
    });
    expect([0, 1, 2].map((col) => host.value("Data", 0, col))).toEqual(["12", "=1+1", "5"]);
  });

  it("takes formulas, those of ours as they are typed", async () => {
    const host = openDesk({ Data: rows([2, 3]) });
    await write((sheet) => {
      sheet.getRange("C1").formulas = [["=A1*B1"]];
      sheet.getRange("D1").formulas = [["=C1+$A$1"]];
      sheet.getRange("E1").formulas = [["=FANROW.ROUND_AREA(A1)"]];
    });
    expect([host.value("Data", 0, 2), host.value("Data", 0, 3)]).toEqual([6, 8]);
    expect(host.typedText("Data", 0, 3)).toBe("=C1+$A$1");
    expect(host.value("Data", 0, 4)).toBeCloseTo(Math.PI, 10);
    expect(host.workbook.sheet("Data")?.cell(0, 4)?.formula).toBe("_xldudf_FANROW_ROUND_AREA(A1)");
  });

  it("refuses arrays of another shape than the range", async () => {
    const host = openDesk({ Data: rows([1, 2]) });
    const shapes: unknown[] = [
      [[1]],
      [[1, 2, 3]],
      [
        [1, 2],
        [3, 4],
      ],
      [1, 2],
      [],
      [[]],
    ];
    for (const shape of shapes) {
      const { code, message } = await refusal(async (context) => {
        context.workbook.worksheets.getItem("Data").getRange("A1:B1").values = shape as number[][];
      });
      expect([code, message.startsWith("Data!A1:B1 takes 1 rows of 2 values")]).toEqual([
        "InvalidArgument",
        true,
      ]);
    }
    expect([host.value("Data", 0, 0), host.value("Data", 0, 1)]).toEqual([1, 2]);
  });

  it("refuses values that no cell can hold", async () => {
    openDesk();
    const { code } = await refusal(async (context) => {
      const range = context.workbook.worksheets.getItem("Data").getRange("A1");
      range.values = [[{ a: 1 }]];
    });
    expect(code).toBe("InvalidArgument");
  });

  it("refuses a formula that cannot be read and leaves all cells of the write as they were", async () => {
    const host = openDesk({ Data: rows([1, "=A1*2"]) });
    const { code, message } = await refusal(async (context) => {
      context.workbook.worksheets.getItem("Data").getRange("A1:C1").formulas = [[5, "=SUM(", 7]];
    });
    expect([code, message]).toEqual(["InvalidArgument", "=SUM(: a bracket is left open; add )"]);
    expect([0, 1, 2].map((col) => host.value("Data", 0, col))).toEqual([1, 2, null]);
    expect(host.canUndo).toBe(false);
  });

  it("writes a large range in the pieces the client library cuts it into", async () => {
    const host = openDesk();
    const values = Array.from({ length: 900 }, (_, row) => [row, -row]);
    await write((sheet) => {
      sheet.getRange("A1:B900").values = values;
    });
    expect([host.value("Data", 1, 1), host.value("Data", 899, 1)]).toEqual([-1, -899]);
    const { code } = await refusal(async (context) => {
      context.workbook.worksheets.getItem("Data").getRange("A1:B901").values = values;
    });
    expect(code).toBe("InvalidArgument");
  });

  it("refuses whole columns and more cells than can be handled", async () => {
    openDesk();
    const column = await refusal(async (context) => {
      context.workbook.worksheets.getItem("Data").getRange("A:A").values =
        1 as unknown as number[][];
    });
    const many = await refusal(async (context) => {
      context.workbook.worksheets.getItem("Data").getRange("A1:F900000").load("values");
    });
    expect([column.code, many.code]).toEqual(["InvalidArgument", "RangeExceedsLimit"]);
  });

  it("passes over cells under a merge", async () => {
    const { Workbook } = await import("../../src/workbook");
    const { pack, parts, worksheet } = await import("../workbook/packages");
    const { hostOf } = await import("./desk");
    const sheet = worksheet(
      '<sheetData><row r="1"><c r="A1"><v>1</v></c></row></sheetData>' +
        '<mergeCells><mergeCell ref="A1:B1"/></mergeCells>',
    );
    const host = hostOf(Workbook.open(pack(parts(sheet))));
    await write((data) => {
      data.getRange("A1:C1").values = [[7, 8, 9]];
    });
    expect([0, 1, 2].map((col) => host.value("Data", 0, col))).toEqual([7, null, 9]);
  });

  it("empties contents, formats or both", async () => {
    const host = openDesk({ Data: rows([1, "=A1*2"], [3, 4]) });
    await write((sheet) => {
      sheet.getRange("A1:B2").format.fill.color = "#00FF00";
      sheet.getRange("A1").clear("Contents");
      sheet.getRange("A2").clear("Formats");
      sheet.getRange("B2").clear();
    });
    expect([host.value("Data", 0, 0), host.value("Data", 0, 1)]).toEqual([null, 0]);
    expect([host.value("Data", 1, 0), host.value("Data", 1, 1)]).toEqual([3, null]);
    const fills = [
      [0, 0],
      [1, 0],
      [1, 1],
    ].map(([row = 0, col = 0]) => host.styleAt("Data", row, col).fill);
    expect(fills).toEqual(["00FF00", undefined, undefined]);
    const { code } = await refusal(async (context) =>
      context.workbook.worksheets.getItem("Data").getRange("A1").clear("Hyperlinks"),
    );
    expect(code).toBe("UnsupportedOperation");
  });

  it("copies formulas for their new place, values or formats alone, and several times over", async () => {
    const host = openDesk({ Data: rows([1, 10, "=A1+$B$1"], [2], [3]), Other: rows([5]) });
    await write((sheet) => {
      sheet.getRange("C1").format.font.bold = true;
      sheet.getRange("C2:C3").copyFrom("C1");
      sheet.getRange("D1:D3").copyFrom(sheet.getRange("C1:C3"), "Values");
      sheet.getRange("E1").copyFrom("C1", "Formats");
      sheet.getRange("F1").copyFrom("Other!A1");
      sheet.getRange("A5").copyFrom("A1:B3", "All", true);
    });
    expect([host.typedText("Data", 2, 2), host.value("Data", 2, 2)]).toEqual(["=A3+$B$1", 13]);
    expect([host.typedText("Data", 2, 3), host.value("Data", 0, 5)]).toEqual(["13", 5]);
    expect([host.styleAt("Data", 2, 2).bold, host.styleAt("Data", 0, 4).bold]).toEqual([
      true,
      true,
    ]);
    expect([host.value("Data", 6, 0), host.value("Data", 4, 1)]).toEqual([3, 10]);
    const up = await refusal(async (context) =>
      context.workbook.worksheets.getItem("Data").getRange("A1").copyFrom("A1", "All", false, true),
    );
    expect(up.code).toBe("UnsupportedOperation");
  });

  it("turns references that would leave the sheet into errors when copied", async () => {
    const host = openDesk({ Data: rows([1], ["=A1"]) });
    await write((sheet) => sheet.getRange("B1").copyFrom("A2", "Formulas"));
    expect(host.typedText("Data", 0, 1)).toBe("=#REF!");
  });
});

describe("A protected sheet", () => {
  it("refuses writes to its cells but takes them where a cell is unlocked", async () => {
    const host = openDesk({ Data: rows([1, 2]) });
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Data");
      sheet.getRange("B1").format.protection.locked = false;
      sheet.protection.protect({ allowAutoFilter: true });
      sheet.protection.load("protected,options");
      const locks = sheet.getRange("A1:B1").format.protection.load("locked");
      const free = sheet.getRange("B1").format.protection.load("locked");
      await context.sync();
      expect([sheet.protection.protected, locks.locked, free.locked]).toEqual([true, null, false]);
      expect(sheet.protection.options.allowAutoFilter).toBe(true);
    });
    const edits: ((sheet: Excel.Worksheet) => void)[] = [
      (sheet) => {
        sheet.getRange("A1").values = [[5]];
      },
      (sheet) => {
        sheet.getRange("A1").format.fill.color = "red";
      },
      (sheet) => sheet.getRange("A1").clear(),
      (sheet) => {
        sheet.getRange("A1").conditionalFormats.add("Custom");
      },
      (sheet) => {
        sheet.getRange("A1").dataValidation.rule = { list: { inCellDropDown: true, source: "a" } };
      },
    ];
    for (const edit of edits) {
      const { code } = await refusal(async (context) =>
        edit(context.workbook.worksheets.getItem("Data")),
      );
      expect(code).toBe("AccessDenied");
    }
    await write((sheet) => {
      sheet.getRange("B1").values = [[7]];
    });
    expect([host.value("Data", 0, 0), host.value("Data", 0, 1)]).toEqual([1, 7]);
    expect(() => host.userEnters("Data", 0, 0, "9")).toThrow(/protected/);
    await write((sheet) => sheet.protection.unprotect());
    host.userEnters("Data", 0, 0, "9");
    expect(host.value("Data", 0, 0)).toBe(9);
  });

  it("is not protected twice, nor with a password, and stays so where the file says so", async () => {
    const { Workbook } = await import("../../src/workbook");
    const { pack, parts, worksheet } = await import("../workbook/packages");
    const { hostOf } = await import("./desk");
    const text = worksheet('<sheetData/><sheetProtection sheet="1"/>');
    hostOf(Workbook.open(pack(parts(text))));
    const asks: ((protection: Excel.WorksheetProtection) => void)[] = [
      (protection) => protection.protect(),
      (protection) => protection.protect({}, "secret"),
      (protection) => protection.unprotect(),
      (protection) => protection.unprotect("secret"),
    ];
    const codes: string[] = [];
    for (const ask of asks) {
      const { code } = await refusal(async (context) =>
        ask(context.workbook.worksheets.getItem("Data").protection),
      );
      codes.push(code);
    }
    expect(codes).toEqual([
      "InvalidOperation",
      "UnsupportedOperation",
      "AccessDenied",
      "UnsupportedOperation",
    ]);
  });
});
