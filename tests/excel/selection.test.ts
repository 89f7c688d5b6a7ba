import { afterEach, describe, expect, it } from "vitest";
import type { Place } from "../../src/cells";
import {
  type CellPlace,
  describeCell,
  insertFormula,
  selectCell,
  selection,
  watchEdits,
  watchSelection,
} from "../../src/excel";
import { settled } from "../desk-host/desk";
import { demoHost, hostError, typedAt } from "./hosts";

describe("the selection", () => {
  it("is the active cell with its sheet", async () => {
    const host = demoHost();
    host.select("Fans", "C5:E9");
    expect(await selection()).toEqual({ sheet: "Fans", row: 4, col: 2, address: "C5" });
  });

  it("goes to a cell of another sheet", async () => {
    const host = demoHost();
    await selectCell("Fans", "K30");
    expect([host.activeSheet, host.selection.top, host.selection.left]).toEqual(["Fans", 29, 10]);
  });

  it("does not show a hidden sheet", async () => {
    const host = demoHost();
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Boxes").visibility = "Hidden";
      await context.sync();
    });
    const { code, message } = await hostError(() => selectCell("Boxes", "A2"));
    expect(code).toBe("SheetHidden");
    expect(message).toBe(
      "The sheet Boxes is hidden: unhide it with a right click on the sheet tabs, then try again.",
    );
    expect(host.sheets.find(({ name }) => name === "Boxes")?.visibility).toBe("hidden");
  });

  it("says where the sheet is gone, or the cell none", async () => {
    demoHost();
    expect((await hostError(() => selectCell("Lots", "A2"))).message).toContain("no sheet Lots");
    expect((await hostError(() => selectCell("Fans", "nowhere"))).code).toBe("InvalidArgument");
  });
});

describe("a formula put in", () => {
  it("goes to the active cell, with or without the equals sign", async () => {
    const host = demoHost();
    host.select("Job", "E20");
    expect(await insertFormula("FANROW.ROUND_AREA(4)")).toBe("E20");
    expect(host.value("Job", 19, 4)).toBeCloseTo(Math.PI * 4, 12);
    host.select("Job", "E21");
    expect(await insertFormula("=1+1")).toBe("E21");
    expect(host.value("Job", 20, 4)).toBe(2);
  });

  it("never overwrites a cell that holds something", async () => {
    const host = demoHost();
    host.select("Fans", "P3");
    const { code, message } = await hostError(() => insertFormula("1+1"));
    expect(code).toBe("CellFilled");
    expect(message).toBe(
      "P3 holds something already. Select an empty cell, then insert the formula.",
    );
    expect(typedAt(host, "Fans", "P3")).toContain("FANROW.FLOW");
  });

  it("is refused on a protected sheet", async () => {
    const host = demoHost();
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Job").protection.protect();
      await context.sync();
    });
    host.select("Job", "E20");
    expect((await hostError(() => insertFormula("1+1"))).code).toBe("SheetProtected");
    expect(host.value("Job", 19, 4)).toBeNull();
  });

  it("that cannot be read is told of and leaves the cell empty", async () => {
    const host = demoHost();
    host.select("Job", "E20");
    const { code } = await hostError(() => insertFormula("1+(2"));
    expect(code).toBe("InvalidArgument");
    expect(host.value("Job", 19, 4)).toBeNull();
  });
});

describe("a cell described", () => {
  it("gives formula, value and text", async () => {
    const host = demoHost();
    const flow = host.value("Fans", 2, 15) as number;
    expect(await describeCell("Fans", 2, 15)).toEqual({
      formula: "FANROW.FLOW(J3,N3,O3,Job!$B$5)",
      value: flow,
      text: flow.toFixed(1),
    });
  });

  it("may hold a date, an error or nothing", async () => {
    demoHost();
    const date = await describeCell("Fans", 1, 20);
    expect([date.formula, typeof date.value]).toEqual([null, "number"]);
    expect(date.text).toMatch(/^2026-\d\d-\d\d$/);
    expect((await describeCell("Fans", 73, 16)).value).toEqual({ error: "#REF!" });
    expect(await describeCell("Fans", 900, 3)).toEqual({ formula: null, value: null, text: "" });
  });
});

describe("a watch of edits", () => {
  const stops: (() => Promise<void>)[] = [];
  afterEach(async () => {
    for (const stop of stops.splice(0)) await stop();
  });

  async function watched() {
    const host = demoHost();
    const edits: Place[] = [];
    stops.push(await watchEdits((edit) => edits.push(edit)));
    return { host, edits };
  }

  it("tells the cells of each sheet that were edited or worked out again", async () => {
    const { host, edits } = await watched();
    host.userEnters("Fans", 2, 10, "3.3");
    host.userEntersBlock("Boxes", 4, 3, [
      ["4", "5"],
      ["4", "5"],
    ]);
    // Fans read with that opening follow; their dwellings show what they showed.
    await expect
      .poll(() => edits)
      .toEqual([
        { sheet: "Fans", top: 2, bottom: 103, left: 9, right: 18 },
        { sheet: "Boxes", top: 4, bottom: 5, left: 3, right: 11 },
      ]);
  });

  it("tells 300 edits of one burst in a few, and loses none", async () => {
    const { host, edits } = await watched();
    for (let row = 0; row < 300; row++) host.userEnters("Fans", row + 2, 10, "3.3");
    await expect.poll(() => Math.max(...edits.map(({ bottom }) => bottom))).toBe(301);
    expect(Math.min(...edits.map(({ top }) => top))).toBe(2);
    expect(edits.length).toBeLessThanOrEqual(5);
  });

  it("waits until the next cell is left", async () => {
    const { host, edits } = await watched();
    host.userEnters("Fans", 2, 10, "3.3");
    host.beginEdit();
    await settled();
    expect(edits).toEqual([]);
    host.endEdit();
    await expect
      .poll(() => edits.map(({ sheet, top }) => [sheet, top]))
      .toContainEqual(["Fans", 2]);
  });

  it("takes inserted and deleted rows for an edit of all that moved", async () => {
    const host = demoHost();
    const edits: Place[] = [];
    const { onMessage } = host;
    // The host has no rows to insert, so an edit is told as an insertion here.
    host.onMessage = (text) => onMessage(text.replace("RangeEdited", "RowInserted"));
    stops.push(await watchEdits((edit) => edits.push(edit)));
    host.userEnters("Fans", 2, 10, "3.3");
    await expect
      .poll(() => edits)
      .toContainEqual({ sheet: "Fans", top: 2, bottom: 1_048_575, left: 0, right: 16_383 });
  });

  it("goes on after an edit of a sheet that is gone", async () => {
    const { host, edits } = await watched();
    host.userEnters("Dwellings", 40, 0, "Lot 41");
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Dwellings").delete();
      await context.sync();
    });
    host.userEnters("Fans", 2, 10, "3.3");
    await expect.poll(() => edits.map(({ sheet }) => sheet)).toContain("Fans");
  });

  it("tells nothing any more once it has ended", async () => {
    const { host, edits } = await watched();
    await stops.splice(0)[0]?.();
    host.userEnters("Fans", 2, 10, "3.3");
    await settled();
    expect(edits).toEqual([]);
  });
});

describe("a watch of the selection", () => {
  it("tells where the selection went, until it ends", async () => {
    const host = demoHost();
    const places: CellPlace[] = [];
    const stop = await watchSelection((at) => places.push(at));
    host.select("Fans", "K3");
    await expect
      .poll(() => places.at(-1))
      .toEqual({ sheet: "Fans", row: 2, col: 10, address: "K3" });
    for (const cell of ["A1", "A2", "A3"]) host.select("Boxes", cell);
    await expect
      .poll(() => places.at(-1))
      .toEqual({ sheet: "Boxes", row: 2, col: 0, address: "A3" });
    // Of a change of sheet alone Excel tells no selection (14), only the sheet.
    const { onMessage } = host;
    host.onMessage = (text) => {
      const told = JSON.parse(text) as { message: { entries?: { messageType: number }[] } };
      const { entries } = told.message;
      if (entries) told.message.entries = entries.filter((each) => each.messageType !== 14);
      onMessage(JSON.stringify(told));
    };
    host.select("Dwellings", "A1");
    await expect
      .poll(() => places.at(-1))
      .toEqual({ sheet: "Dwellings", row: 0, col: 0, address: "A1" });
    host.onMessage = onMessage;
    const told = places.length;
    await stop();
    host.select("Fans", "K4");
    await settled();
    expect(places.length).toBe(told);
  });
});
