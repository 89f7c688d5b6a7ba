import { describe, expect, it } from "vitest";
import { lines, reportRows, reportText, selfTest, writeReport } from "../../src/excel/self-test";
import { openDesk, rows } from "../desk-host/desk";

describe("The test in this Excel, on the desk's host", () => {
  it("passes every line and leaves the user's sheets as they were", async () => {
    openDesk({ Data: rows([1, "=A1*2"]) });
    const results = await selfTest();
    const failed = results.filter(({ outcome }) => outcome === "fail");
    expect(failed).toEqual([]);
    expect(results).toHaveLength(lines.length);
    const rowsOfReport = reportRows(results, [{ name: "help", outcome: "not tried" }], "0.0.0");
    await writeReport(rowsOfReport);
    expect(reportText(rowsOfReport)).toContain("by hand: help\tnot tried");
    await Excel.run(async (context) => {
      const { worksheets } = context.workbook;
      worksheets.load("items/name");
      const data = worksheets.getItem("Data").getUsedRange();
      data.load("formulas");
      await context.sync();
      expect(worksheets.items.map(({ name }) => name)).toEqual(["Data", "Fanrow test report"]);
      expect(data.formulas).toEqual([[1, "=A1*2"]]);
    });
  }, 120_000);

  it("goes on after a line that fails and one that never ends", async () => {
    openDesk();
    const results = await selfTest(undefined, [
      { name: "fails", expected: "1", run: () => Promise.reject(new Error("no")) },
      { name: "never ends", expected: "1", limit: 0.05, run: () => new Promise(() => {}) },
      { name: "tells", expected: null, run: async () => "told" },
    ]);
    expect(results.map(({ outcome }) => outcome)).toEqual(["fail", "fail", "told"]);
    expect(results[1]?.got).toContain("nothing within");
  });
});
