import { describe, expect, it } from "vitest";
import { worksheetFunctions } from "../../functions";
import { typedForm } from "../../src/desk/host/cells/typed-form";
import { inTypedForm } from "../../src/sheet";

describe("The quick way of respelling formulas of files", () => {
  const names = ["ROUND_AREA", "FLOW", "NOT_OURS"].map((id) => `_xldudf_FANROW_${id}`);
  const calls = [...names, "_xlfn.IFS", "_xlfn.STDEV.S", "_xlfn._xlws.FILTER", "SUM", "_xlfn.NAME"];
  const inner = [
    "A1",
    "$B$2:C9",
    "'a sheet'!A1",
    '"text with _xlfn.IFS("',
    '"a ""quoted"" _xldudf_FANROW_FLOW("',
    "'it''s _xlfn.IFS'!B2",
    "_xlfn.ANCHORARRAY(A1)",
    "_xlfn.SINGLE(A1:A3)",
    "T[[#This Row],[Flow]]",
    "_xlfn.LET(_xlpm.x,1,_xlpm.x+1)",
    "[1]!_xldudf_FANROW_FLOW(A1)",
    "name_xlfn.x",
  ];

  it("gives what taking them apart gives", () => {
    let count = 0;
    for (const call of calls)
      for (const first of inner)
        for (const second of inner) {
          const stored = `${call}(${first},${second})*2`;
          expect(typedForm(stored, worksheetFunctions)).toBe(
            inTypedForm(stored, worksheetFunctions),
          );
          count++;
        }
    expect(count).toBe(calls.length * inner.length ** 2);
  });
});
