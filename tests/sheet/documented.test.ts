// The examples on the pages of these functions in Microsoft's documentation (support.microsoft.com, "… function"),
// from memory and with as many digits as are remembered, except where an identity is named.
import { describe, expect, it } from "vitest";
import { desk } from "./book";

const own = desk({
  A1: -70_000,
  A2: 12_000,
  A3: 15_000,
  A4: 18_000,
  A5: 21_000,
  A6: 26_000,
  C1: { error: "#DIV/0!" },
  C2: 4,
  C3: 7,
  C4: { error: "#N/A" },
  D1: "=SUM(C2:C3)",
  E1: "C3",
});

describe("functions with an example in Microsoft's documentation", () => {
  it.each<[string, number, number]>([
    ['=YEARFRAC("2012-01-01","2012-07-30")', 0.58055556, 8],
    ['=YEARFRAC("2012-01-01","2012-07-30",1)', 0.57650273, 8],
    ['=YEARFRAC("2012-01-01","2012-07-30",3)', 0.57808219, 8],
    ['=DAYS360("2011-01-30","2011-02-01")', 1, 0],
    ['=DAYS360("2011-01-01","2011-12-31")', 360, 0],
    ['=WEEKNUM("2012-03-09")', 10, 0],
    ['=WEEKNUM("2012-03-09",2)', 11, 0],
    ['=WORKDAY("2008-10-01",151)', 39_933, 0],
    ['=TIMEVALUE("2:24 AM")', 0.1, 9],
    ['=CONVERT(1,"lbm","kg")', 0.4535924, 7],
    ['=CONVERT(68,"F","C")', 20, 9],
    ['=CONVERT(CONVERT(100,"ft","m"),"ft","m")', 9.290304, 6],
    ["=PMT(0.08/12,10,10000)", -1037.03, 2],
    ["=PV(0.08/12,12*20,500,,0)", -59_777.15, 2],
    ["=FV(0.06/12,10,-200,-500,1)", 2581.4, 2],
    ["=NPER(0.12/12,-100,-1000,10000,1)", 59.6738657, 7],
    ["=NPV(0.1,-10000,3000,4200,6800)", 1188.44, 2],
    [
      "=NPV(0.1,A1:A5,C2,C3)",
      -70_000 / 1.1 +
        12_000 / 1.1 ** 2 +
        15_000 / 1.1 ** 3 +
        18_000 / 1.1 ** 4 +
        21_000 / 1.1 ** 5 +
        4 / 1.1 ** 6 +
        7 / 1.1 ** 7,
      6,
    ],
    ["=Z.TEST({3;6;7;8;6;5;4;2;1;9},4)", 0.090574, 6],
    ["=Z.TEST({3;6;7;8;6;5;4;2;1;9},6)", 0.863043, 6],
    ["=IRR(A1:A5)", -0.021, 3],
    ["=IRR(A1:A6)", 0.087, 3],
    ["=SUM(LINEST({1;9;5;7},{0;4;2;3})*{1,10})", 12, 9],
    ["=INDEX(TREND({1;9;5;7},{0;4;2;3},{10}),1)", 21, 9],
    ["=SUM(MMULT({1,3;7,2},{2,0;0,2})*{1,10;100,1000})", 2 + 60 + 1400 + 4000, 0],
    ["=MDETERM({1,3,8,5;1,3,6,1;1,1,1,0;7,3,10,2})", 88, 9],
    [
      "=SUM(MINVERSE({1,2,1;3,4,-1;0,2,0})*{1,10,100;1000,10000,100000;1,1,1})",
      0.25 + 2.5 - 75 + 50_000 + 0.75 - 0.25 - 0.25,
      9,
    ],
    ["=SUM(FREQUENCY({79;85;78;85;50;81;95;88;97},{70;79;89})*{1;10;100;1000})", 2421, 9],
    ["=PROB({0;1;2;3},{0.2;0.3;0.1;0.4},2)", 0.1, 9],
    ["=PROB({0;1;2;3},{0.2;0.3;0.1;0.4},1,3)", 0.8, 9],
    ["=SUM(MODE.MULT({1;2;3;4;3;2;1;2;3;5;6;1})*{1;10;100})", 321, 9],
    ["=PERCENTILE.EXC({1;2;3;6;6;6;7;8;9},0.25)", 2.5, 9],
    ["=PERCENTRANK.INC({13;12;11;8;4;3;2;1;1;1},2)", 0.333, 9],
    ["=PERCENTRANK.EXC({1;2;3;6;6;6;7;8;9},7)", 0.7, 9],
    ["=TRIMMEAN({4;5;6;7;2;3;4;5;1;2;3},0.2)", 3.778, 3],
    ["=COVARIANCE.S({2;4;8},{5;11;12})", 9.666666667, 9],
    ["=SKEW.P({3;4;5;2;3;4;5;6;4;7})", 0.303193, 6],
    ["=KURT({3;4;5;2;3;4;5;6;4;7})", -0.151799637, 9],
    ["=BINOM.DIST(6,10,0.5,FALSE)", 0.2050781, 7],
    ["=BINOM.INV(6,0.5,0.75)", 4, 0],
    ["=BINOM.DIST.RANGE(60,0.75,48)", 0.084, 3],
    ["=NEGBINOM.DIST(10,5,0.25,TRUE)", 0.3135141, 7],
    ["=NEGBINOM.DIST(10,5,0.25,FALSE)", 0.0550487, 7],
    ["=POISSON.DIST(2,5,TRUE)", 0.124652, 6],
    ["=BETA.DIST(2,8,10,TRUE,1,3)", 0.6854706, 7],
    ["=BETA.DIST(2,8,10,FALSE,1,3)", 1.4837646, 7],
    ["=BETA.INV(0.685470581,8,10,1,3)", 2, 7],
    ["=F.DIST(15.20686486,6,4,TRUE)", 0.99, 7],
    ["=F.DIST(15.20686486,6,4,FALSE)", 0.0012238, 7],
    ["=F.INV(0.01,6,4)", 0.10930991, 8],
    ["=CHISQ.DIST.RT(18.307,10)", 0.0500006, 7],
    ["=CONFIDENCE.T(0.05,1,50)", 0.284196855, 9],
    ["=NORM.INV(0.908789,40,1.5)", 42.000002, 6],
    ["=T.DIST.2T(1.959999998,60)", 0.054645, 6],
    ["=ERF(0.745)", 0.70792892, 8],
    ["=BESSELI(1.5,1)", 0.981666428, 7],
    ["=GAMMALN(4)", 1.7917595, 7],
    ['=HEX2DEC("A5")', 165, 0],
    ["=COMBINA(4,3)", 20, 0],
    ["=PERMUTATIONA(3,2)", 9, 0],
    ["=ACOT(2)", 0.4636, 4],
    ["=COT(30)", -0.156, 3],
    ["=FLOOR.PRECISE(-3.2,-1)", -4, 0],
    ["=CEILING.PRECISE(-4.3)", -4, 0],
    ["=GCD(24,36)", 12, 0],
    ["=LCM(24,36)", 72, 0],
    ["=ERROR.TYPE(C1)", 2, 0],
    ["=SUM(OFFSET(C1,1,0,2,1))", 11, 0],
    ["=INDIRECT(E1)", 7, 0],
    ["=AREAS((B2:D4,E5,F6:I9))", 3, 0],
    // Identities: the summary of what is left once errors are out.
    ["=AGGREGATE(9,6,C1:C4)", 11, 0],
    ["=AGGREGATE(14,6,C1:C4,2)", 4, 0],
    // The chance of both tails and the middle is one.
    ["=T.DIST(-40,9,TRUE)+T.DIST.RT(-40,9)", 1, 15],
    ["=NORM.S.DIST(NORM.S.INV(1E-300),TRUE)*1E300", 1, 9],
    ["=F.DIST(F.INV(0.3,5,11),5,11,TRUE)", 0.3, 12],
  ])("%s gives %d", (formula, expected, digits) => {
    expect(own.ask(formula)).toBeCloseTo(expected, digits);
  });

  it.each<[string, unknown]>([
    ['=CONVERT(2.5,"ft","sec")', { error: "#N/A" }],
    ["=DEC2BIN(9,4)", "1001"],
    ["=COMPLEX(3,4)", "3+4i"],
    ['=TEXTBEFORE("Red riding hood\'s, red hood","hood")', "Red riding "],
    ['=TEXTAFTER("Red riding hood\'s, red hood","hood")', "'s, red hood"],
    ['=TEXTAFTER("Red riding hood\'s, red hood","hood",-2)', "'s, red hood"],
    ['=TEXTBEFORE("Red riding hood\'s, red hood","HOOD",2,1)', "Red riding hood's, red "],
    ['=IMSUB("13+4i","5+3i")', "8+i"],
    ["=ADDRESS(2,3)", "$C$2"],
    ["=ADDRESS(2,3,2,FALSE)", "R2C[3]"],
    ['=ADDRESS(2,3,1,FALSE,"EXCEL SHEET")', "'EXCEL SHEET'!R2C3"],
    ["=FORMULATEXT(D1)", "=SUM(C2:C3)"],
    ["=ISREF(C1)", true],
    ['=INDIRECT("no reference")', { error: "#REF!" }],
    ["=GCD(-1,5)", { error: "#NUM!" }],
    ["=ISODD(TRUE)", { error: "#VALUE!" }],
    ["=XMATCH(4,{1;3;5},-1,2)", 2],
    ["=MATCH(39,{25;38;40;41},1)", 2],
    ["=MATCH(40,{25;38;40;41},-1)", { error: "#N/A" }],
    // As workbooks saved by Excel 16 hold them: of an array in an array its first value; the angle less
    // quarter turns of 64 binary places; a blank name of a link as 0; nothing left as #CALC!.
    ["=SUM(MUNIT({1,2;3,4}))", 4],
    ["=INDEX({2,3;4,5},{2,1})", 4],
    ["=TAN(1.5707963267948966)", 16_324_552_277_619_072],
    ['=HYPERLINK("https://example.org",B9)', 0],
    ["=LCM(C2:C3,B9)", 28],
    ["=LCM(B1:B2,C2)", 0],
    ["=LARGE({1,2},0.9)", { error: "#NUM!" }],
    ["=SEQUENCE(0)", { error: "#CALC!" }],
    ["=SEQUENCE(-1)", { error: "#VALUE!" }],
    ["=TAKE({1,2;3,4},0)", { error: "#CALC!" }],
    ['=IMTAN("7+25j")', "3.82126757337684E-22+j"],
    ['=DECIMAL("113",2)', { error: "#NUM!" }],
    ["=PPMT(0.1,2,1,4)", { error: "#NUM!" }],
  ])("%s gives %j", (formula, expected) => {
    expect(own.ask(formula)).toEqual(expected);
  });
});

describe("references found while running", () => {
  it("follow the cells they turn out to read, in whatever order those are worked out", () => {
    const sheet = desk({
      A1: "=OFFSET(B1,0,D1)",
      B1: 1,
      C1: "=E1*2",
      D1: 1,
      E1: 3,
      F1: '=INDIRECT("A"&D1)+1',
    });
    expect(sheet.values("A1:F1")).toEqual([[6, 1, 6, 1, 3, 7]]);
    sheet.type("E1", "5");
    expect(sheet.values("A1:F1")).toEqual([[10, 1, 10, 1, 5, 11]]);
    sheet.type("D1", "0");
    expect(sheet.value("A1")).toBe(1);
  });

  it("keep the cell of a name to the left of its reader", () => {
    const sheet = desk(
      { B2: 4, C2: "=LeftOf*10" },
      { names: [{ name: "LeftOf", sheet: null, formula: "Main!XFD1" } as never] },
    );
    expect(sheet.value("C2")).toBe(40);
  });
});
