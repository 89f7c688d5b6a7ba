import { describe, expect, it } from "vitest";
import type { WorksheetFunction } from "../../functions";
import { FormulaSyntaxError, inStoredForm, inTypedForm } from "../../src/sheet";
import { desk } from "./book";

const named = (id: string): WorksheetFunction => ({
  id,
  description: "",
  parameters: [],
  call: () => id,
});
const own = [named("ROUND_AREA"), named("FLOW")];

describe("the stored spelling", () => {
  it.each([
    [
      "FANROW.ROUND_AREA(B2)+fanrow.flow(C2)",
      "_xldudf_FANROW_ROUND_AREA(B2)+_xldudf_FANROW_FLOW(C2)",
    ],
    ["XLOOKUP(1,A:A,B:B)", "_xlfn.XLOOKUP(1,A:A,B:B)"],
    ["SORT(FILTER(A1:A9,B1:B9>1))", "_xlfn._xlws.SORT(_xlfn._xlws.FILTER(A1:A9,B1:B9>1))"],
    ["SUM(A1#)", "SUM(_xlfn.ANCHORARRAY(A1))"],
    ["@A1:A3+@FLOW(A1)", "_xlfn.SINGLE(A1:A3)+_xlfn.SINGLE(FLOW(A1))"],
    ["LET(x,B1,y,x*2,x+y)", "_xlfn.LET(_xlpm.x,B1,_xlpm.y,_xlpm.x*2,_xlpm.x+_xlpm.y)"],
    ["T[@Flow]/T[@[Rated flow]]", "T[[#This Row],[Flow]]/T[[#This Row],[Rated flow]]"],
    ['SUM(A1,2)&"FANROW.FLOW(1)"', 'SUM(A1,2)&"FANROW.FLOW(1)"'],
  ])("%s", (typed, stored) => {
    expect(inStoredForm(`=${typed}`, own)).toBe(stored);
    expect(inTypedForm(stored, own).toLowerCase()).toBe(
      typed
        .replaceAll(/T\[@(\w+)\]/g, "T[[#This Row],[$1]]")
        .replaceAll("T[@[Rated flow]]", "T[[#This Row],[Rated flow]]")
        .toLowerCase(),
    );
  });

  it("knows the spelling with the index of another file", () => {
    expect(inTypedForm("[2]!_xldudf_FANROW_FLOW(A1)*2", own)).toBe("FANROW.FLOW(A1)*2");
  });

  it("leaves names of ours that do not exist alone", () => {
    expect(inStoredForm("FANROW.NOPE(1)", own)).toBe("FANROW.NOPE(1)");
    expect(inTypedForm("_xldudf_FANROW_NOPE(1)", own)).toBe("_xldudf_FANROW_NOPE(1)");
  });
});

describe("a formula that cannot be read", () => {
  it.each([
    ["=SUM(A1", "left open"],
    ["=A1)", "closing bracket"],
    ['="abc', 'closing "'],
    ["=1+*2", "=1+*2"],
  ])("%s is refused with the place and the remedy, and the cell stays", (text, words) => {
    const own = desk({ A1: 5, B1: "=A1*2" });
    expect(() => own.type("B1", text)).toThrow(FormulaSyntaxError);
    expect(() => own.type("B1", text)).toThrow(words);
    expect(own.value("B1")).toBe(10);
    own.type("A1", "6");
    expect(own.value("B1")).toBe(12);
  });
});
