import { describe, expect, it } from "vitest";
import { worksheetFunctions } from "../../functions";
import { Desk } from "../../src/desk/desk";
import { pressKey } from "../../src/desk/grid/keys";
import { WorkbookHost } from "../../src/desk/host";
import { insertRow, sortRows, takeRowOut } from "../../src/desk/rows/act";
import { restOf } from "../../src/desk/rows/complete";
import { anchored } from "../../src/desk/text/anchor";
import { jobWorkbook } from "../../src/new-job";
import { openDesk, rows } from "./desk";

/** A desk with a new job of two dwellings and one box, at the first fan. */
function atFirstFan(): Desk {
  const workbook = jobWorkbook({
    settings: { edition: "IRC-2021", units: "ip", low: 1, high: 8, constant: 1.07 },
    features: ["visits"],
    dwellings: [{ dwelling: "Lot 1" }, { dwelling: "Lot 2" }],
    boxes: ["A", "B"].map((opening, i) => ({ box: "Box 1", opening, area: 20 + 30 * i })),
    fans: Array.from({ length: 6 }, () => ({})),
  });
  const desk = new Desk(new WorkbookHost(workbook, { functions: worksheetFunctions }));
  desk.showSheet("Fans");
  desk.moveTo(1, 0);
  return desk;
}

/** Presses keys as the grid and its editor take them; returns how many. */
function press(desk: Desk, ...keys: readonly string[]): number {
  let count = 0;
  for (const key of keys.flatMap((each) =>
    /^(Tab|Ctrl.*|Shift.*)$/.test(each) ? [each] : [...each],
  )) {
    count++;
    const [ctrlKey, shiftKey] = [key.startsWith("Ctrl"), key.startsWith("Shift")];
    const name = key.replace(/^(Ctrl|Shift)\+/, "");
    const event = { key: name, ctrlKey, shiftKey, metaKey: false, altKey: false };
    const typed = desk.edit ? desk.edit.text.slice(0, typedLength) : "";
    if (name.length > 1 || ctrlKey) pressKey(event, { desk, page: () => 20 });
    else {
      if (desk.edit) desk.retype(typed + name);
      else pressKey(event, { desk, page: () => 20 });
      typedLength = typed.length + 1;
      const { row, col } = desk.cursor;
      const text = typed + name;
      desk.retype(text + restOf(desk, row, col, text));
    }
  }
  return count;
}
let typedLength = 0;

const shown = (desk: Desk, row: number) =>
  [
    "Dwelling",
    "Fan",
    "Room kind",
    "Duty",
    "Box",
    "Openings in use",
    "Reading 1 (Pa)",
    "Tester",
  ].map((heading) => {
    const { book, sheet, extent } = desk;
    const col = Array.from({ length: extent.usedCols }, (_, each) => each).find(
      (each) => book.value(sheet.name, 0, each) === heading,
    );
    return book.value(sheet.name, row, col as number);
  });

describe("fans typed into a new job", () => {
  it("takes at most 25 keys for the first and the second, with box, tester and day", () => {
    const desk = atFirstFan();
    const first = press(
      desk,
      ...["Ctrl+.", "L", "Tab", "B1", "Tab", "Tab", "b", "Tab", "o", "Tab", "110", "Tab"],
      ...["A", "Tab", "2.4", "Tab", "JR", "Tab", "Ctrl+;"],
    );
    expect(first).toBeLessThanOrEqual(25);
    const told = ["bathroom", "on demand", "Box 1"];
    expect(shown(desk, 1)).toEqual(["Lot 1", "B1", ...told, "A", 2.4, "JR"]);
    const second = press(
      desk,
      ...["Ctrl+.", "B2", "Tab", "b", "Tab", "o", "Tab", "80", "Tab", "B", "Tab", "2.1", "Ctrl+."],
    );
    expect(second).toBeLessThanOrEqual(25);
    expect(shown(desk, 2)).toEqual(["Lot 1", "B2", ...told, "B", 2.1, "JR"]);
    // Over a dwelling that was repeated the next one is offered.
    press(desk, "Shift+Tab", "L", "Tab");
    expect(shown(desk, 3)[0]).toBe("Lot 2");
  });

  it("never completes a number, nor a name that is there whole", () => {
    const desk = atFirstFan();
    desk.book.userEnters("Fans", 1, 0, "Lot 12");
    expect(restOf(desk, 2, 0, "Lot 1")).toBe("");
    expect(restOf(desk, 2, 1, "L")).toBe("");
    expect(restOf(desk, 2, 0, "Lo")).toBe("t 12");
  });
});

describe("rows of a list with formulas", () => {
  const dwellings = () => {
    const host = openDesk({
      Fans: rows(
        ["Fan", "Hole", "Pressure", "Flow"],
        ["Lot 1", "", "", ""],
        ["B1", 20, 4, "=B3*C3^0.5"],
        ["B2", 30, 1, "=#REF!*C4"],
        ["All of it", "", "", "=SUM(D3:D4)"],
        ["B3", 10, 9, "=B6*C6^0.5"],
      ),
      Total: rows(["=Fans!D6", "=SUM(Fans!D3:D6)", "=Fans!D4"]),
    });
    const desk = new Desk(host);
    desk.moveTo(3, 0);
    const column = () => [2, 3, 4, 5, 6].map((row) => host.typedText("Fans", row, 3));
    const total = () => [0, 1, 2].map((col) => host.typedText("Total", 0, col));
    return { host, desk, column, total };
  };

  it("are put in so that an odd formula goes with its row, and sums within and elsewhere follow", () => {
    const { host, desk, column, total } = dwellings();
    const before = [column(), total()];
    insertRow(desk);
    const [first, odd] = ["=B3*C3^0.5", "=#REF!*C5"];
    expect(column()).toEqual([first, "=B4*C4^0.5", odd, "=SUM(D3:D5)", "=B7*C7^0.5"]);
    expect(total()).toEqual(["=Fans!D7", "=SUM(Fans!D3:D7)", "=Fans!D5"]);
    desk.undo();
    expect([column(), total()]).toEqual(before);
    desk.moveTo(2, 0);
    takeRowOut(desk);
    expect(column().slice(0, 3)).toEqual(["=#REF!*C3", "=SUM(D3)", "=B5*C5^0.5"]);
    expect(total()).toEqual(["=Fans!D5", "=SUM(Fans!D3:D6)", "=Fans!D3"]);
    expect(host.typedText("Fans", 2, 0)).toBe("B2");
  });

  it("are sorted with the formula that is another one than those of its column", () => {
    const { host, desk } = dwellings();
    desk.moveTo(2, 2);
    sortRows(desk, -1);
    const at = [1, 2, 3, 4, 5].find((row) => host.typedText("Fans", row, 0) === "B2") as number;
    expect(host.typedText("Fans", at, 3)).toBe(`=#REF!*C${at + 1}`);
  });
});

describe("a formula that is typed", () => {
  it("has the reference at the caret held in the next way, and no other text", () => {
    const ways = ["=A1+B2", "=A1+$B$2", "=A1+B$2", "=A1+$B2", "=A1+B2"];
    for (const [i, text] of ways.slice(0, -1).entries())
      expect(anchored(text, text.length)).toEqual({
        text: ways[i + 1],
        caret: ways[i + 1]?.length,
      });
    expect(anchored("=SUM(A1:B2)*2", 6)).toEqual({ text: "=SUM($A$1:B2)*2", caret: 9 });
    expect(anchored("B2", 2).text).toBe("B2");
  });

  it("is filled to the right as it is down", () => {
    const host = openDesk({ Data: rows(["=A2*2", "", ""], [1, 2, 3]) });
    const desk = new Desk(host);
    desk.selectArea(0, 0, 0, 2);
    press(desk, "Ctrl+r");
    expect([0, 1, 2].map((col) => host.typedText("Data", 0, col))).toEqual([
      "=A2*2",
      "=B2*2",
      "=C2*2",
    ]);
  });
});
