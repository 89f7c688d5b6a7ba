import { describe, expect, it } from "vitest";
import { desk } from "./book";

const column = { A1: 1, A2: 2, A3: 3 };

describe("spilled formulas", () => {
  it("fill their neighbours and follow their input", () => {
    const own = desk(column);
    expect(own.type("C1", "=A1:A3*10")).toEqual(["C1", "C2", "C3"]);
    expect(own.values("C1:C3")).toEqual([[10], [20], [30]]);
    expect(own.workbook.sheet("Main")?.cell(0, 2)?.arrayRef).toBe("C1:C3");
    expect(own.workbook.sheet("Main")?.cell(2, 2)?.value).toBe(30);
    expect(own.type("A2", "5")).toEqual(["A2", "C2"]);
  });

  it("give #SPILL! where a cell is taken, and spill when it is free again", () => {
    const own = desk({ ...column, C2: "mine" });
    own.type("C1", "=A1:A3");
    expect(own.value("C1")).toMatchObject({ error: "#SPILL!" });
    expect(own.model.recompute("Main", 0, 2)).toEqual({ value: { error: "#SPILL!" } });
    expect(own.values("C2:C3")).toEqual([["mine"], [null]]);
    own.type("C2", "");
    expect(own.values("C1:C3")).toEqual([[1], [2], [3]]);
  });

  it("give way to what is typed into them", () => {
    const own = desk(column);
    own.type("C1", "=A1:A3");
    own.type("C3", "99");
    expect(own.value("C1")).toMatchObject({ error: "#SPILL!" });
    expect(own.values("C2:C3")).toEqual([[null], [99]]);
    own.type("C3", "");
    expect(own.values("C1:C3")).toEqual([[1], [2], [3]]);
  });

  it("shrink and grow, and readers of the spill follow", () => {
    const own = desk({ ...column, E1: "=SUM(C1:C9)" });
    own.type("C1", "=FILTER(A1:A3,A1:A3>1)");
    own.type("F1", "=SUM(C1#)");
    expect(own.values("E1:F1")).toEqual([[5, 5]]);
    own.type("A2", "0");
    expect(own.values("C1:C3")).toEqual([[3], [null], [null]]);
    expect(own.values("E1:F1")).toEqual([[3, 3]]);
    own.type("A1", "4");
    own.type("A2", "5");
    expect(own.values("C1:C3")).toEqual([[4], [5], [3]]);
    expect(own.values("E1:F1")).toEqual([[12, 12]]);
  });

  it("are cleared with their formula", () => {
    const own = desk(column);
    own.type("C1", "=A1:A3");
    expect(own.type("C1", "")).toEqual(["C1", "C2", "C3"]);
    expect(own.values("C1:C3")).toEqual([[null], [null], [null]]);
  });

  it("are refused inside a table, with the remedy", () => {
    const table = {
      name: "T",
      sheet: "Main",
      ref: "A1:B4",
      columns: ["a", "b"],
      headerRow: true,
      totalsRow: false,
    };
    const own = desk({ A1: "a", B1: "b", A2: 1, A3: 2 }, { tables: [table] });
    own.type("B2", "=A2:A3");
    expect(own.value("B2")).toEqual({
      error: "#SPILL!",
      message: "a table takes no spilled results: use a formula for one row",
    });
  });

  it("read stored arrays: the anchor and its cells", () => {
    const own = desk({
      ...column,
      C1: { formula: "A1:A3*2", arrayRef: "C1:C3", value: 0 },
      C2: 0,
      C3: 0,
    });
    expect(own.values("C1:C3")).toEqual([[2], [4], [6]]);
    expect(own.model.recompute("Main", 2, 2)).toEqual({ value: 6 });
  });
});

describe("arrays within formulas", () => {
  it.each<[string, unknown]>([
    ["=SUM(A1:A3*2)", 12],
    ["=SUM((A1:A3>1)*1)", 2],
    ["=SUM(IF(A1:A3>1,A1:A3,0))", 5],
    ["=SUM({1,2;3,4}*10)", 100],
    ["=SUM(A1:A3*{1,10})", 66],
    ['=SUM(LEN({"a","bb"}))', 3],
    ["=MAX(ROUND(A1:A3/2,0))", 2],
    ["=INDEX(A1:A3*2,3)", 6],
    ["=SUM(IFERROR(1/(A1:A3-2),0))", 0],
    ["=MATCH(1,(A1:A3=2)*(A1:A3<9),0)", 2],
    ["=SUMPRODUCT(A1:A3,A1:A3)", 14],
    ["=SUM(TRANSPOSE(A1:A3)*A1:A3)", 36],
    ["=SUM(ROW(A1:A3))", 6],
    ["=SUM(A1:A3+{1;2})", { error: "#N/A" }],
    ["=VLOOKUP(2,CHOOSE({1,2},A1:A3,A1:A3*5),2,FALSE)", 10],
  ])("%s gives %j", (formula, expected) => {
    expect(desk(column).ask(formula)).toEqual(expected);
  });

  it("keep a formula that needs it as an array formula of one cell", () => {
    const own = desk(column);
    own.type("C1", "=SUM(A1:A3*2)");
    own.type("D1", "=SUM(A1:A3)");
    const sheet = own.workbook.sheet("Main");
    expect([sheet?.cell(0, 2)?.arrayRef, sheet?.cell(0, 3)?.arrayRef]).toEqual(["C1", null]);
  });
});
