import { describe, expect, it } from "vitest";
import { readWorkbook, selection } from "../../src/excel";
import { demoHost, hostError, refuseAll } from "./hosts";

describe("a refusal of Excel", () => {
  it.each([
    ["InvalidOperationInCellEditMode", "finish or leave the cell you are editing, then try again"],
    ["AccessDenied", "protected, or open for reading only"],
    ["ReadOnlyWorkbook", "open for reading only: save a copy"],
    ["ItemAlreadyExists", "already has something of this name"],
    ["ItemNotFound", "a sheet may have been deleted meanwhile"],
    ["RequestPayloadSizeLimitExceeded", "more than Excel takes at once"],
    ["ResponsePayloadSizeLimitExceeded", "more than Excel hands over at once"],
    ["RangeExceedsLimit", "more cells than Excel handles at once"],
    ["ApiNotFound", "This version of Excel lacks something"],
    ["UnsupportedFeature", "Update Excel"],
    ["MergedRangeConflict", "Merged cells are in the way"],
    ["FilteredRangeConflict", "A filter is in the way"],
    ["UnsupportedSheet", "holds no cells"],
  ])("%s is put into a sentence", async (code, words) => {
    refuseAll(demoHost(), code, "Told by Excel.");
    const error = await hostError(selection);
    expect(error.code).toBe(code);
    expect(error.message).toContain(words);
    // What Excel said is kept for whoever looks into it.
    expect((error.cause as Error).message).toContain("Told by Excel.");
  });

  it("that is not known keeps Excel's own words, the place and the code", async () => {
    refuseAll(demoHost(), "OddTrouble", "The moon is wrong.");
    const { code, message } = await hostError(readWorkbook);
    expect(code).toBe("OddTrouble");
    expect(message).toBe("Excel refused at Range.values: The moon is wrong. (OddTrouble)");
  });

  it("is told while a cell is being edited", async () => {
    const host = demoHost();
    host.beginEdit();
    const { code, message } = await hostError(() => readWorkbook());
    expect(code).toBe("InvalidOperationInCellEditMode");
    expect(message).toBe(
      "A cell is being edited: finish or leave the cell you are editing, then try again.",
    );
    host.endEdit();
    expect((await readWorkbook()).file.sheets.length).toBe(4);
  });

  it("other than Excel's own is told as a fault of ours, with what to report", async () => {
    demoHost();
    const error = await hostError(() =>
      readWorkbook(() => {
        throw new TypeError("the caller's own trouble");
      }),
    );
    expect(error.code).toBe("Unexpected");
    expect(error.message).toContain("This is a fault of Fanrow");
  });
});
