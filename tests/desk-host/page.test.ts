import { describe, expect, it } from "vitest";
import type { Change } from "../../src/desk/host";
import { Workbook } from "../../src/workbook";
import { openDesk, rows } from "./desk";

describe("The page's side of the host", () => {
  it("hears of every change and of nothing after it stopped listening", () => {
    const host = openDesk({ Data: rows([1, "=A1*2"]) });
    const heard: Change[] = [];
    const stop = host.onChange((change) => heard.push(change));
    host.userEnters("Data", 0, 0, "4");
    expect(heard).toEqual([
      {
        kind: "cells",
        origin: "user",
        edited: [{ sheet: "Data", top: 0, left: 0, bottom: 0, right: 0 }],
        values: [
          { sheet: "Data", row: 0, col: 0, before: 1, value: 4 },
          { sheet: "Data", row: 0, col: 1, before: 0, value: 8 },
        ],
      },
    ]);
    stop();
    host.userEnters("Data", 0, 0, "5");
    expect(heard).toHaveLength(1);
  });

  it("hears what the pane changes: cells, formats, marks, layout, sheets, settings", async () => {
    const host = openDesk();
    const kinds: string[] = [];
    host.onChange((change) => kinds.push(change.kind));
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Data");
      sheet.getRange("A1").values = [[1]];
      sheet.getRange("A1").format.font.bold = true;
      sheet.getRange("A1").conditionalFormats.add("Custom");
      sheet.freezePanes.freezeRows(1);
      context.workbook.worksheets.add("New");
      context.workbook.names.add("Limit", "=1");
    });
    expect(kinds).toEqual(["cells", "formats", "marks", "layout", "sheets", "names"]);
  });

  it("selects cells and hears of selections by the pane", async () => {
    const host = openDesk({ Data: [], Other: [] });
    const selected: string[] = [];
    host.onSelect(({ sheet, top, left }) => selected.push(`${sheet} ${top} ${left}`));
    host.select("Data", "B2:C3");
    host.select("Data", "B2:C3");
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Other").getRange("D4").select();
    });
    host.activate("data");
    expect(selected).toEqual(["Data 1 1", "Other 3 3", "Data 0 0"]);
    expect([host.activeSheet, host.selection.top]).toEqual(["Data", 0]);
    expect(() => host.select("Nowhere", "A1")).toThrow(/no sheet "Nowhere"/);
  });

  it("gives a new row the looks of the one above it, takes them back with it, and gives none to a row it refuses", () => {
    const host = openDesk({ Data: rows(["x", 45000]) });
    host.userEnters("Data", 0, 0, "007");
    const book = host.workbook.sheet("Data");
    book?.setStyle(0, 0, host.workbook.restyle(0, { numberFormat: "@" }));
    book?.setStyle(0, 1, host.workbook.restyle(0, { numberFormat: "0.00", bold: true }));
    const looks = () => [host.styleAt("Data", 1, 0), host.styleAt("Data", 1, 1)];
    const plain = looks();
    expect(() => host.userEntersCells("Data", [{ row: 1, col: 1, text: "=1+" }], 1)).toThrow();
    expect(looks()).toEqual(plain);
    host.userEntersCells("Data", [{ row: 1, col: 0, text: "008" }], 1);
    expect(host.value("Data", 1, 0)).toBe("008");
    expect(looks()).toMatchObject([{ numberFormat: "@" }, { numberFormat: "0.00", bold: true }]);
    host.undo();
    expect([host.value("Data", 1, 0), looks()]).toEqual([null, plain]);
    host.redo();
    expect(host.value("Data", 1, 0)).toBe("008");
    expect(looks()[1]).toMatchObject({ bold: true });
  });

  it("lets what reads a list follow a row that is put in, in one step, and what goes along with a row alone", () => {
    const host = openDesk({
      Fans: rows(["Flow", ""], [10, ""], [20, ""], [30, ""]),
      Total: rows([""]),
    });
    const formulas = ["=SUM($A$2:A2)", "=SUM($A$2:A3)", "=SUM($A$2:A4)"];
    for (const [i, text] of formulas.entries()) host.userEnters("Fans", i + 1, 1, text);
    host.userEnters("Fans", 0, 1, "=COUNT(A2:A4)");
    host.userEnters("Total", 0, 0, "=SUM(Fans!A2:A4)/MAX(fans!$A$2:$A$4)+Fans!A4+SUM(Fans!A2:A40)");
    const before = host.typedText("Total", 0, 0);
    const cells = [
      { row: 4, col: 0, text: "30" },
      { row: 3, col: 0, text: "5" },
      { row: 4, col: 1, text: "=SUM($A$2:A5)" },
    ];
    const move = { sheet: "Fans", row: 3, by: 1, top: 1, bottom: 3, left: 0, right: 1 } as const;
    host.userEntersCells("Fans", cells, 4, move);
    expect(host.typedText("Total", 0, 0)).toBe(
      "=SUM(Fans!A2:A5)/MAX(fans!$A$2:$A$5)+Fans!A5+SUM(Fans!A2:A40)",
    );
    expect(host.typedText("Fans", 0, 1)).toBe("=COUNT(A2:A5)");
    expect([1, 2, 3].map((row) => host.typedText("Fans", row, 1))).toEqual(formulas);
    expect([host.value("Fans", 0, 1), host.value("Fans", 4, 1)]).toEqual([4, 65]);
    host.undo();
    expect(host.typedText("Total", 0, 0)).toBe(before);
    expect([host.value("Fans", 3, 0), host.value("Fans", 4, 0)]).toEqual([30, null]);
    host.redo();
    expect(host.value("Fans", 0, 1)).toBe(4);
  });

  it("shows in the formula bar what gives the same cell when entered again", () => {
    const host = openDesk();
    const typed = [
      "12",
      "'12",
      "'=A1",
      "a text",
      "TRUE",
      "=1+1",
      "25%",
      "2026-03-05",
      "#N/A",
      "''x",
    ];
    typed.forEach((text, row) => {
      host.userEnters("Data", row, 0, text);
    });
    const shown = typed.map((_, row) => host.typedText("Data", row, 0));
    expect(shown).toEqual(typed);
    const before = typed.map((_, row) => host.value("Data", row, 0));
    shown.forEach((text, row) => {
      host.userEnters("Data", row, 0, text);
    });
    expect(typed.map((_, row) => host.value("Data", row, 0))).toEqual(before);
  });

  it("says what is wrong with a formula and leaves the cell as it was", () => {
    const host = openDesk({ Data: rows([1]) });
    expect(() => host.userEnters("Data", 0, 0, "=SUM(1")).toThrow(/bracket is left open/);
    expect(host.value("Data", 0, 0)).toBe(1);
  });

  it("opens another workbook in place of the first and saves what is open", async () => {
    const host = openDesk({ Data: rows([1]) });
    host.userEnters("Data", 0, 0, "2");
    expect([host.isDirty, host.canUndo]).toEqual([true, true]);
    const first = host.save();
    expect(host.isDirty).toBe(false);
    const kinds: string[] = [];
    host.onChange((change) => kinds.push(change.kind));
    const other = Workbook.create();
    other.addSheet("Second", { rows: [[{ value: "here" }]] });
    host.open(other, "second.xlsx");
    expect([kinds, host.canUndo, host.fileName]).toEqual([["opened"], false, "second.xlsx"]);
    await Excel.run(async (context) => {
      const cell = context.workbook.worksheets.getActiveWorksheet().getRange("A1").load("values");
      await context.sync();
      expect(cell.values).toEqual([["here"]]);
    });
    expect(Workbook.open(first).sheet("Data")?.cell(0, 0)?.value).toBe(2);
  });

  it("gives the sheets in the order of their tabs", () => {
    const host = openDesk({ Data: rows([1, 2], [3]), Other: [] });
    expect(host.sheets[0]).toMatchObject({
      name: "Data",
      visibility: "visible",
      isProtected: false,
      frozenRows: 0,
      frozenCols: 0,
      rowCount: 2,
      colCount: 2,
    });
    expect(host.sheets.map(({ name }) => name)).toEqual(["Data", "Other"]);
  });
});

describe("Undo", () => {
  it("takes back entries one by one and brings them back", () => {
    const host = openDesk({ Data: rows([1, "=A1*2"]) });
    host.userEnters("Data", 0, 0, "5");
    host.userEnters("Data", 0, 1, "gone");
    host.undo();
    expect([host.typedText("Data", 0, 1), host.value("Data", 0, 1)]).toEqual(["=A1*2", 10]);
    host.undo();
    expect([host.value("Data", 0, 0), host.value("Data", 0, 1)]).toEqual([1, 2]);
    expect([host.canUndo, host.canRedo]).toEqual([false, true]);
    host.redo();
    host.redo();
    expect([host.value("Data", 0, 0), host.value("Data", 0, 1)]).toEqual([5, "gone"]);
    expect(host.canRedo).toBe(false);
    host.undo();
    host.userEnters("Data", 5, 5, "new");
    expect(host.canRedo).toBe(false);
  });

  it("takes back all that one run of the pane wrote, and runs one by one", async () => {
    const host = openDesk({ Data: rows([1, 2]) });
    const write = (values: number[]) =>
      Excel.run(async (context) => {
        const sheet = context.workbook.worksheets.getItem("Data");
        for (const [i, value] of values.entries()) {
          sheet.getRangeByIndexes(0, i, 1, 1).values = [[value]];
          await context.sync();
        }
        sheet.getRange("A1").values = [[-1]];
      });
    await write([10, 20]);
    await write([100, 200]);
    host.undo();
    expect([host.value("Data", 0, 0), host.value("Data", 0, 1)]).toEqual([-1, 20]);
    host.undo();
    expect([host.value("Data", 0, 0), host.value("Data", 0, 1)]).toEqual([1, 2]);
    host.redo();
    expect([host.value("Data", 0, 0), host.value("Data", 0, 1)]).toEqual([-1, 20]);
  });

  it("takes back a pasted block and emptied cells as one step each", () => {
    const host = openDesk({ Data: rows([1]) });
    host.userEntersBlock("Data", 0, 0, [
      ["2", "=A1"],
      ["x", ""],
    ]);
    expect([host.value("Data", 0, 1), host.value("Data", 1, 0)]).toEqual([2, "x"]);
    host.userClears({ sheet: "Data", top: 0, left: 0, bottom: 9, right: 9 });
    expect(host.value("Data", 0, 0)).toBeNull();
    host.undo();
    expect([host.value("Data", 0, 1), host.value("Data", 1, 0)]).toEqual([2, "x"]);
    host.undo();
    expect([host.value("Data", 0, 0), host.value("Data", 0, 1)]).toEqual([1, null]);
  });

  it("lets a formula spill again over what was typed into its cells", () => {
    const host = openDesk({ Data: rows([1], [2], [3]) });
    host.userEnters("Data", 0, 1, "=A1:A3*2");
    host.userEnters("Data", 1, 1, "in the way");
    expect(host.value("Data", 0, 1)).toEqual(expect.objectContaining({ error: "#SPILL!" }));
    host.undo();
    expect([0, 1, 2].map((row) => host.value("Data", row, 1))).toEqual([2, 4, 6]);
    expect(host.typedText("Data", 1, 1)).toBe("");
  });

  it("keeps texts, blanks and formulas of files as they were", () => {
    const workbook = Workbook.create();
    workbook.addSheet("Data", {
      rows: [
        [{ value: "12" }, { formula: "_xldudf_FANROW_ROUND_AREA(D1)", value: 0 }, { value: 4 }],
      ],
    });
    const host = openDesk();
    host.open(workbook, "a.xlsx");
    for (const col of [0, 1, 2, 3]) host.userEnters("Data", 0, col, "9");
    for (let i = 0; i < 4; i++) host.undo();
    expect([0, 2, 3].map((col) => host.value("Data", 0, col))).toEqual(["12", 4, null]);
    expect(workbook.sheet("Data")?.cell(0, 1)?.formula).toBe("_xldudf_FANROW_ROUND_AREA(D1)");
  });

  it("passes over sheets that are gone, and does nothing when there is nothing", async () => {
    const host = openDesk({ Data: [], Other: [] });
    host.undo();
    host.redo();
    host.userEnters("Other", 0, 0, "1");
    await Excel.run(async (context) => context.workbook.worksheets.getItem("Other").delete());
    expect(host.canUndo).toBe(false);
  });

  it("is refused on a protected sheet and can be had later", async () => {
    const host = openDesk();
    host.userEnters("Data", 0, 0, "1");
    const protection = (on: boolean) =>
      Excel.run(async (context) => {
        const sheet = context.workbook.worksheets.getItem("Data");
        if (on) sheet.protection.protect();
        else sheet.protection.unprotect();
      });
    await protection(true);
    expect(() => host.undo()).toThrow(/protected/);
    expect(host.canUndo).toBe(true);
    await protection(false);
    host.undo();
    expect(host.value("Data", 0, 0)).toBeNull();
  });
});
