import { describe, expect, it } from "vitest";
import { desk } from "./book";

describe("references", () => {
  it("read other sheets, quoted names and whole columns", () => {
    const own = desk({
      "Two Words!A1": 4,
      "Two Words!A2": 6,
      A1: "='Two Words'!A1*2",
      A2: "=SUM('two words'!A:A)",
      A3: "=SUM('Two Words'!1:1)",
    });
    expect(own.values("A1:A3")).toEqual([[8], [10], [4]]);
  });

  it("see cells added below the used part of a whole column", () => {
    const own = desk({ B1: "=SUM(A:A)", A1: 1 });
    own.type("A500", "9");
    expect(own.value("B1")).toBe(10);
  });

  it("follow defined names: constants, ranges and formulas, a sheet's own first", () => {
    const own = desk(
      { A1: 2, A2: 3, B1: "=rate*2", B2: "=SUM(readings)", B3: "=twice+1", "Other!A1": "=rate" },
      {
        names: [
          { name: "Rate", formula: "0.5", sheet: null },
          { name: "Rate", formula: "7", sheet: "Other" },
          { name: "Readings", formula: "Main!$A$1:$A$2", sheet: null },
          { name: "Twice", formula: "SUM(Readings)*2", sheet: null },
        ],
      },
    );
    expect(own.values("B1:B3")).toEqual([[1], [5], [11]]);
    expect(own.value("Other!A1")).toBe(7);
    expect(own.type("A1", "5")).toEqual(["A1", "B2", "B3"]);
  });

  it("name a name that refers to itself as not evaluated", () => {
    const own = desk(
      { A1: { formula: "loop+1", value: 5 } },
      { names: [{ name: "loop", formula: "loop*2", sheet: null }] },
    );
    expect(own.value("A1")).toBe(5);
    expect(own.model.unsupported()[0]?.what).toContain("refers to itself");
  });

  const table = {
    name: "Fans",
    sheet: "Main",
    ref: "A1:C4",
    columns: ["Tag", "Flow", "Rated flow"],
    headerRow: true,
    totalsRow: false,
  };
  const fans = () =>
    desk(
      {
        A1: "Tag",
        B1: "Flow",
        C1: "Rated flow",
        A2: "F1",
        B2: 40,
        C2: 50,
        A3: "F2",
        B3: 60,
        C3: 50,
        A4: "F3",
        B4: 80,
        C4: 50,
        E2: "=Fans[[#This Row],[Flow]]/Fans[[#This Row],[Rated flow]]",
        E3: "=Fans[[#This Row],[Flow]]/Fans[[#This Row],[Rated flow]]",
        E7: "=Fans[[#This Row],[Flow]]",
        F1: "=SUM(Fans[flow])",
        F2: "=Fans[[#Headers],[Rated flow]]",
        F3: "=COUNTA(Fans[#All])",
        F4: "=SUM(Fans[[Flow]:[Rated flow]])",
        F5: "=ROWS(Fans)",
      },
      { tables: [table] },
    );

  it("read tables by column, row and section", () => {
    const own = fans();
    expect(own.values("E2:E3")).toEqual([[0.8], [1.2]]);
    expect(own.value("E7")).toEqual({ error: "#VALUE!" });
    expect(own.values("F1:F5")).toEqual([[180], ["Rated flow"], [12], [330], [3]]);
    expect(own.type("B3", "70")).toEqual(["B3", "E3", "F1", "F4"]);
  });

  it("take a bare [@Column] typed inside a table for that table's", () => {
    const own = fans();
    own.type("C4", "=[@Flow]*2");
    expect(own.value("C4")).toBe(160);
    expect(own.workbook.sheet("Main")?.cell(3, 2)?.formula).toBe("Fans[[#This Row],[Flow]]*2");
  });

  it("take what two ranges share, and unions", () => {
    const own = desk({
      A1: 1,
      A2: 2,
      B1: 3,
      B2: 4,
      C1: "=SUM(A1:B1 B1:B2)",
      C2: "=SUM((A1,B1:B2))",
      C3: "=SUM(A1 B2)",
    });
    expect(own.values("C1:C3")).toEqual([[3], [8], [{ error: "#NULL!" }]]);
  });

  it("list what a formula reads", () => {
    const own = desk({ A1: 1, B1: "=A1+SUM(A1:A3)" });
    expect(own.model.precedents("Main", 0, 1)).toEqual([
      { sheet: "Main", top: 0, left: 0, bottom: 0, right: 0 },
      { sheet: "Main", top: 0, left: 0, bottom: 2, right: 0 },
    ]);
    expect(own.model.precedents("Main", 0, 0)).toEqual([]);
  });

  it("refuse a sheet that is not there", () => {
    expect(() => desk({ A1: 1 }).model.value("Nowhere", 0, 0)).toThrow('no sheet "Nowhere"');
  });
});
