import { describe, expect, it } from "vitest";
import { book, Desk, desk } from "./book";

describe("typing into cells", () => {
  it("recalculates what depends on the cell, and says what changed", () => {
    const own = desk({ A1: 1, A2: 2, B1: "=A1*2", B2: "=A2*2", C1: "=SUM(B1:B2)", D1: '=C1&"!"' });
    expect(own.type("A1", "10")).toEqual(["A1", "B1", "C1", "D1"]);
    expect(own.values("B1:D1")).toEqual([[20, 24, "24!"]]);
    expect(own.type("A1", "10")).toEqual([]);
  });

  it("gives the value before and after", () => {
    const own = desk({ A1: 1, B1: "=A1*2" });
    expect(own.model.set("Main", 0, 0, 4)).toEqual([
      { sheet: "Main", row: 0, col: 0, before: 1, value: 4 },
      { sheet: "Main", row: 0, col: 1, before: 2, value: 8 },
    ]);
  });

  it("writes formulas and results to the workbook", () => {
    const own = desk({ A1: 4 });
    own.type("B1", "=xlookup(A1,A1:A2,A1:A2)");
    expect(own.workbook.sheet("Main")?.cell(0, 1)).toMatchObject({
      formula: "_xlfn.XLOOKUP(A1,A1:A2,A1:A2)",
      value: 4,
    });
    own.type("B1", "7");
    expect(own.workbook.sheet("Main")?.cell(0, 1)).toMatchObject({ formula: null, value: 7 });
  });

  it("no longer follows a formula that was replaced", () => {
    const own = desk({ A1: 1, B1: "=A1+SUM(A1:A2)" });
    own.type("B1", "=A5");
    expect(own.type("A1", "9")).toEqual(["A1"]);
    expect(own.type("A5", "3")).toEqual(["A5", "B1"]);
  });

  it("works down a chain as long as a sheet", () => {
    const cells: Record<string, number | string> = { A1: 1 };
    for (let row = 2; row <= 20_000; row++) cells[`A${row}`] = `=A${row - 1}+1`;
    const own = desk(cells);
    expect(own.value("A20000")).toBe(20_000);
    expect(own.type("A1", "2")).toHaveLength(20_000);
  });
});

describe("formulas that are not evaluated", () => {
  const cells = {
    A1: 2,
    B1: { formula: "PIVOTBY(A1,0,0)*A1", value: 77 },
    B2: { formula: "SUM([1]Prices!A1:A3)", value: 12 },
    B3: { formula: "_xldudf_FANROW_LATER(A1)", value: "kept" },
    B4: { formula: "SUM(Main:Other!A1)", value: 5 },
    B5: { formula: "RAND()", value: 0.5 },
    C1: "=B1+A1",
    "Other!A1": 1,
  };

  it("keep their stored value, are listed with the reason, and serve their readers", () => {
    const own = desk(cells);
    expect(own.values("B1:B5")).toEqual([[77], [12], ["kept"], [5], [0.5]]);
    expect(own.value("C1")).toBe(79);
    own.type("A1", "3");
    expect(own.values("B1:C1")).toEqual([[77, 80]]);
    expect(own.model.unsupported().map(({ row, what }) => `${row} ${what}`)).toEqual([
      "0 the function PIVOTBY",
      "1 a link to another workbook",
      "2 the function _xldudf_FANROW_LATER, which Fanrow does not have",
      "3 a reference over several sheets, Main:Other",
      "4 the function RAND",
    ]);
    expect(own.workbook.sheet("Main")?.cell(1, 1)?.value).toBe(12);
  });

  it("give the reason instead of a value when typed anew, since nothing is stored for them", () => {
    const own = desk({ A1: 2 });
    own.type("B1", "=PIVOTBY(A1,0,0)");
    expect(own.value("B1")).toEqual({
      error: "#N/A",
      message: "not evaluated: the function PIVOTBY",
    });
    expect(own.workbook.sheet("Main")?.cell(0, 1)?.formula).toBe("PIVOTBY(A1,0,0)");
  });

  it("do not include a cell that only asks for its own place", () => {
    const own = desk({ A3: "=ROW(A3)+COLUMNS(A1:C3)" });
    expect(own.value("A3")).toBe(6);
    expect(own.model.unsupported()).toEqual([]);
  });

  it("say so when a circle is typed", () => {
    const own = desk({ A1: "=B1" });
    own.type("B1", "=A1+1");
    expect(own.value("B1")).toEqual({
      error: "#N/A",
      message: "not evaluated: a circular reference",
    });
    own.type("B1", "4");
    expect(own.values("A1:B1")).toEqual([[4, 4]]);
    expect(own.model.unsupported()).toEqual([]);
  });

  it("include arrays too large to hold", () => {
    const own = desk({
      A1: { formula: "SUM(ROW(A1:A99999)*COLUMN(A1:XFD1))", arrayRef: "A1", value: 1 },
      B99999: 1,
      XFC1: 1,
    });
    expect(own.value("A1")).toBe(1);
    expect(own.model.unsupported()[0]?.what).toContain("an array of");
  });

  it("keep their stored value when the same formula is entered again", () => {
    const own = desk(cells);
    own.type("B1", "=PIVOTBY(A1,0,0)*A1");
    expect(own.value("B1")).toBe(77);
  });

  it("include every formula of a circle, but not its readers", () => {
    const own = desk({
      A1: { formula: "B1+1", value: 10 },
      B1: { formula: "SUM(A1:A2)", value: 20 },
      C1: "=B1*2",
      D1: { formula: "D1+1", value: 3 },
    });
    expect(own.values("A1:D1")).toEqual([[10, 20, 40, 3]]);
    expect(own.model.unsupported().map(({ col, what }) => [col, what])).toEqual([
      [0, "a circular reference"],
      [1, "a circular reference"],
      [3, "a circular reference"],
    ]);
    own.type("A1", "1");
    expect(own.values("A1:C1")).toEqual([[1, 1, 2]]);
    expect(own.model.unsupported().map(({ col }) => col)).toEqual([3]);
  });
});

describe("recomputing one cell", () => {
  it("works from the stored values and changes nothing", () => {
    const own = new Desk(
      book({
        A1: 2,
        B1: { formula: "A1*10", value: 999 },
        C1: { formula: "B1+1", value: 5 },
        D1: { formula: "RAND()", value: 2 },
      }),
    );
    expect(own.model.recompute("Main", 0, 1)).toEqual({ value: 20 });
    expect(own.model.recompute("Main", 0, 2)).toEqual({ value: 1000 });
    expect(own.model.recompute("Main", 0, 3)).toEqual({ unsupported: "the function RAND" });
    expect(own.model.recompute("Main", 0, 0)).toEqual({ value: 2 });
    expect(own.values("A1:D1")).toEqual([[2, 999, 5, 2]]);
  });

  it("sees sheets and cells changed past the model after a refresh", () => {
    const own = desk({ A1: 1, B1: "=A1*2" });
    own.workbook.sheet("Main")?.setValue(0, 0, 5);
    own.model.refresh();
    expect(own.model.recompute("Main", 0, 1)).toEqual({ value: 10 });
  });
});
