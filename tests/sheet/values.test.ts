// Excel's rules for values, from memory unless a source is named.
import { describe, expect, it } from "vitest";
import { desk } from "./book";

const own = desk({
  A1: 3,
  A3: "text",
  A4: "7",
  A5: true,
  A6: "",
  B1: { error: "#N/A" },
  C1: 0.1,
});

describe("values in formulas", () => {
  it.each<[string, unknown]>([
    ["=A2", 0],
    ["=A2&A2", ""],
    ['=A2=""', true],
    ["=A2=0", true],
    ["=A2=FALSE", true],
    ["=A6=0", false],
    ["=A6+1", { error: "#VALUE!" }],
    ["=A4+1", 8],
    ["=SUM(A1:A6)", 3],
    ["=SUM(A1,A4,TRUE)", 4],
    ['=SUM("4",TRUE)', 5],
    ["=AVERAGE(A1:A6)", 3],
    ["=COUNT(A1:A6)", 1],
    ["=COUNTA(A1:A6)", 5],
    ["=COUNTBLANK(A1:A6)", 2],
    ["=COUNTBLANK(D:D)", 1_048_576],
    ['=COUNTIFS(D1:D5,"")', 5],
    ['=COUNTIF(A1:A6,"")', 2],
    ['=COUNTIF(A1:A6,"=")', 1],
    ['=COUNTIF(A1:A6,"<>")', 5],
    ["=COUNTIF(A1:A6,7)", 1],
    ["=MEDIAN(A1:A6)", 3],
    ["=-2^2", 4],
    ["=0-2^2", -4],
    ["=2^3^2", 64],
    ["=50%%", 0.005],
    ["=0^0", { error: "#NUM!" }],
    ["=10^400", { error: "#NUM!" }],
    ['=9<"A"', true],
    ['="z"<FALSE', true],
    ['="Fan"="fan"', true],
    ["=C1+0.2=0.3", false],
    ["=B1+1", { error: "#N/A" }],
    ["=1/0+B1", { error: "#DIV/0!" }],
    ["=AND(FALSE,B1)", { error: "#N/A" }],
    ["=IF(TRUE,1,B1)", 1],
    ['=IF("yes",1,2)', { error: "#VALUE!" }],
    ['=IFERROR(B1,"none")', "none"],
    ['=IFNA(1/0,"none")', { error: "#DIV/0!" }],
    ["=CHOOSE(2,1/0,5)", 5],
    ["=IFS(FALSE,1)", { error: "#N/A" }],
    [
      "=TYPE_OF_NOTHING",
      { error: "#NAME?", message: "not evaluated: the name TYPE_OF_NOTHING, which is not defined" },
    ],
    ["=#REF!+1", { error: "#REF!" }],
    ["=SUM(B1,1)", { error: "#N/A" }],
    ["=ISERROR(B1)", true],
    ["=LET(x,A1,y,x*2,x+y)", 9],
    ["=N(A5)+ISNUMBER(A4)", 1],
    ['="a""b"', 'a"b'],
    ["=-A2", 0],
    ['=1E21&""', "1E+21"],
    ['=1E20&""', "100000000000000000000"],
  ])("%s gives %j", (formula, expected) => {
    expect(own.ask(formula)).toEqual(expected);
  });

  it("keeps a plain range to the cell in the formula's own row", () => {
    const rows = desk({ A1: 1, A2: 2, A3: 3, B2: "=A1:A3*10", B5: "=A1:A3*10" });
    expect(rows.value("B2")).toBe(20);
    expect(rows.value("B5")).toEqual({ error: "#VALUE!" });
  });

  it("takes @ as the cell in the formula's own row", () => {
    const rows = desk({ A1: 1, A2: 2, A3: 3 });
    rows.type("B3", "=@A1:A3");
    expect(rows.value("B3")).toBe(3);
    expect(rows.value("B4")).toBeNull();
  });

  it("reads dates of both calendars", () => {
    // 1 January 1904 is day 0 of the 1904 system and day 1462 of the 1900 system.
    const late = desk({ A1: 0, B1: "=YEAR(A1)", B2: "=DATE(2024,1,1)" }, { date1904: true });
    expect(late.values("B1:B2")).toEqual([[1904], [45292 - 1462]]);
  });

  it("takes the clock it is given", () => {
    const own = desk({ A1: "=TODAY()", A2: "=NOW()" }, { now: () => new Date(2026, 2, 5, 6, 0) });
    expect(own.values("A1:A2")).toEqual([[46086], [46086.25]]);
  });
});

describe("functions that LibreOffice 7.4 has not (Microsoft's documentation, from memory)", () => {
  const list = desk({
    A1: "Apple",
    A2: "Pear",
    A3: "Fig",
    A4: "Pear",
    B1: 10,
    B2: 20,
    B3: 30,
    B4: 40,
  });
  it.each<[string, unknown]>([
    ['=XLOOKUP("fig",A1:A4,B1:B4)', 30],
    ['=XLOOKUP("plum",A1:A4,B1:B4,"none")', "none"],
    ['=XLOOKUP("plum",A1:A4,B1:B4)', { error: "#N/A" }],
    ['=XLOOKUP("P*",A1:A4,B1:B4,,2)', 20],
    ['=XLOOKUP("pear",A1:A4,B1:B4,,0,-1)', 40],
    ["=XLOOKUP(25,B1:B4,A1:A4,,-1)", "Pear"],
    ["=XLOOKUP(25,B1:B4,A1:A4,,1)", "Fig"],
    ['=SUM(XLOOKUP("pear",A1:A4,B1:B4):B4)', 90],
    ["=XMATCH(35,B1:B4,1)", 4],
    ["=SUM(SEQUENCE(4,2,1,2))", 64],
    ["=ROWS(UNIQUE(A1:A4))", 3],
    ["=INDEX(SORT(B1:B4,,-1),1)", 40],
    ['=TEXTJOIN("/",TRUE,FILTER(A1:A4,B1:B4>15))', "Pear/Fig/Pear"],
    ['=FILTER(A1:A4,B1:B4>99,"none")', "none"],
    ["=FILTER(A1:A4,B1:B4>99)", { error: "#CALC!" }],
    ["=INDEX(SORTBY(A1:A4,B1:B4,-1),2)", "Fig"],
    ["=CONCAT(SORTBY({1,2,3},{3,2,2}))", "231"],
    ["=CONCAT(SORT({2,1;1,2;1,1},{1,2},{1,-1}))", "121121"],
    ["=XMATCH(4,{9,4,1,2},0,2)", 2],
    ['=ROW(INDIRECT("A05"))', 5],
    ['="23:9999"*1', 23 / 24 + 9999 / 1440],
    ['=SUMIFS(B1:B4,A1:A4,"p*",B1:B4,">20")', 40],
  ])("%s gives %j", (formula, expected) => {
    expect(list.ask(formula)).toEqual(expected);
  });
});
