import { describe, expect, it } from "vitest";
import { auditFormulas } from "../../src/audit";
import type { CellValue } from "../../src/cells";
import { toJobFile } from "../../src/command";
import { checkJob } from "../../src/job";
import { isKnownToAgree } from "../../src/sheet/native/agreeing";
import { type CellSpec, Workbook } from "../../src/workbook";
import { answerKey, demo, today } from "../excel/demo";
import { compareJobs } from "./compare";

const heads = ["Dwelling", "Fan", "Pressure (Pa)", "Open area (in²)", "Extra"];

/** The stale values told of a job with one more formula and its stored value. */
function stale(formula: string, value: CellValue, sheet = "Fans"): string[] {
  const cells: CellSpec[] = ["Lot 1", "B1", 4, 10].map((one) => ({ value: one }));
  const book = Workbook.create();
  book.addSheet(sheet, {
    rows: [heads.map((head) => ({ value: head })), [...cells, { formula, value }]],
  });
  return checkJob(toJobFile(book), 46_000, auditFormulas)
    .findings.filter(({ kind }) => kind === "value-stale")
    .map(({ what }) => what);
}

describe("A stored value that the formula does not give", () => {
  it("is told where every function in it is known to agree", () => {
    expect(stale("SUM(C2:D2)", 15)).toEqual(["15 is stored where the formula gives 14"]);
  });

  it.each([
    ["a function that was not compared", 'TEXT(C2,"# ?/?")'],
    ["another workbook", "[1]Sheet1!A1+1"],
    ["a lost reference", "SUM(#REF!)"],
    ["a criterion of exclusion", 'COUNTIF(A2:D2,"<>"&C2)'],
  ])("is not told of %s", (_, formula) => {
    expect(isKnownToAgree(formula)).toBe(false);
    expect(stale(formula, 99)).toEqual([]);
  });

  it("is none where a program keeps TRUE as 1", () => {
    expect(stale("C2>1", 1)).toEqual([]);
    expect(stale("C2>1", 0)).toEqual(['0 is stored where the formula gives "true"']);
  });

  it("is not told of a formula that reads one of which nothing is stored", () => {
    const book = demo();
    for (const { name, cells } of [...book.sheets].map((sheet) => ({
      name: sheet.name,
      cells: [...sheet.cells()],
    })))
      for (const { row, col, formula } of cells)
        if (formula !== null && (name === "Boxes" || (name === "Fans" && col > 7)))
          book.sheet(name)?.setFormula(row, col, formula, null);
    const told = (kind: string) =>
      checkJob(toJobFile(book), today, auditFormulas).findings.filter((one) => one.kind === kind);
    for (const { what } of told("value-stale")) expect(what).toMatch(/^nothing is stored/);
    const unknown = answerKey().filter(({ kind }) => kind === "opening-unknown");
    expect(told("opening-unknown").map(({ cell }) => cell)).toEqual(
      unknown.map(({ cell }) => cell),
    );
  });

  it("is told with the digits in which the two differ, and long texts are cut", () => {
    expect(stale("C2*0.07", 0.2800001)).toEqual([
      "0.2800001 is stored where the formula gives 0.28",
    ]);
    const [what = ""] = stale('REPT("ab",16000)', "c".repeat(20_000));
    expect(what.length).toBeLessThan(200);
  });
});

describe("A workbook with nothing of a job in it", () => {
  const budget = (amount: number, formula: string) => {
    const book = Workbook.create();
    const items = [3, 4, amount, 6, 7].map((value, i) => [
      { value: `Item ${i}` },
      { value },
      { formula: i === 2 ? formula : `B${i + 2}*2`, value: value * 2 },
    ]);
    book.addSheet("Budget", {
      rows: [["Item", "Cost", "Twice"].map((value) => ({ value })), ...items],
    });
    return toJobFile(book);
  };

  it("gets one line and nothing is judged", () => {
    const { findings, isJob, job } = checkJob(budget(5, "99"), 46_000, auditFormulas);
    expect(isJob).toBe(false);
    expect(findings).toEqual([]);
    expect(job.noFans).toMatch(/^no readings of exhaust fans/);
  });

  it("is compared cell by cell, so that no change is passed over", () => {
    const changes = compareJobs(budget(5, "B4*2"), budget(8, "B4*3"), { today: 46_000 });
    expect(changes.map(({ kind, cell, before, after }) => [kind, cell, before, after])).toEqual([
      ["typed", "B4", "5", "8"],
      ["formula", "C4", "=B4*2", "=B4*3"],
      ["result", "C4", "10", "16"],
    ]);
  });
});
