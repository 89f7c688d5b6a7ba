import { describe, expect, it } from "vitest";
import { worksheetFunctions } from "../../functions";
import { Desk } from "../../src/desk/desk";
import { pressKey } from "../../src/desk/grid/keys";
import { WorkbookHost } from "../../src/desk/host";
import { restOf } from "../../src/desk/rows/complete";
import { jobWorkbook } from "../../src/new-job";

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
