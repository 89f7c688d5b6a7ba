import { describe, expect, it } from "vitest";
import { auditFormulas } from "../../src/audit";
import { toJobFile } from "../../src/command";
import { checkJob, type Finding, type Grid } from "../../src/job";
import { demo, today } from "../excel/demo";
import { grid, jobFile, type TestCell } from "../job/grids";

const by = (formula: string): TestCell => ({ formula, value: 1 });
const found = (...sheets: Grid[]) =>
  auditFormulas(jobFile(...sheets), []).map(({ sheet, cell, kind }) => `${sheet}!${cell} ${kind}`);
const times = <T>(count: number, make: (i: number) => T): T[] =>
  Array.from({ length: count }, (_, i) => make(i));

describe("sound columns raise nothing", () => {
  it("of two tables one above the other, with and without a blank row between", () => {
    const head = ["Name", "Number", "Result"];
    const upper = times(6, (i) => [`a${i}`, i, by(`B${i + 2}*2`)]);
    const lower = (from: number) => times(6, (i) => [`b${i}`, i, by(`B${from + i}/7+$B$1`)]);
    expect(found(grid("One", [head, ...upper, [], head, ...lower(10)]))).toEqual([]);
    expect(found(grid("One", [head, ...upper, head, ...lower(9)]))).toEqual([]);
    expect(found(grid("One", [head, ...upper, ...lower(8)]))).toEqual([]);
  });

  it("with subtotals between the groups and a total below", () => {
    const rows: TestCell[][] = [["Name", "Number", "Result"]];
    for (let group = 0; group < 4; group++) {
      const top = rows.length + 1;
      for (let i = 0; i < 4; i++) {
        const n = rows.length + 1;
        rows.push([`g${group} ${i}`, i, by(`B${n}*2`)]);
      }
      const [first, last] = [top, rows.length];
      rows.push(["Subtotal", by(`SUM(B${first}:B${last})`), by(`SUM(C${first}:C${last})`)]);
    }
    rows.push(["All", by(`SUBTOTAL(9,B2:B${rows.length})`), by(`SUBTOTAL(9,C2:C${rows.length})`)]);
    expect(found(grid("Groups", rows))).toEqual([]);
  });

  it("with formulas of several kinds in turn", () => {
    const rows = times(20, (i) => [i, by(i % 2 === 0 ? `A${i + 1}*2` : `A${i + 1}+7`)]);
    expect(found(grid("Turns", rows))).toEqual([]);
  });

  it("with a sum a group on another sheet", () => {
    const data = grid("Data", [["Group", "Number"], ...times(12, (i) => [`g${i}`, i])]);
    const sums = grid("Sums", [
      ["Group", "Sum"],
      ...times(4, (i) => [`g${i}`, by(`SUM(Data!B${2 + 3 * i}:B${4 + 3 * i})`)]),
    ]);
    expect(found(data, sums)).toEqual([]);
  });

  it("with running sums and with windows of neighbours", () => {
    const rows = times(20, (i) => [
      i,
      by(`SUM(A$1:A${i + 1})`),
      by(`AVERAGE(A${i + 1}:A${i + 3})`),
    ]);
    expect(found(grid("Running", rows))).toEqual([]);
  });

  it("with labels that only look like numbers", () => {
    const rows = times(8, (i) => [`0${i}`, i, by(`B${i + 1}*2`)]);
    expect(found(grid("Labels", rows))).toEqual([]);
  });

  it("in the spellings of several programs", () => {
    const spelled = (n: number) =>
      [
        `_xldudf_FANROW_FLOW(A${n},B${n},1.07)`,
        `FANROW.FLOW(A${n},B${n},1.07)`,
        `[3]!_xldudf_FANROW_FLOW(A${n},B${n},1.07)`,
        `fanrow.flow( A${n}, B${n}, 1.07 )`,
      ][n % 4] as string;
    const rows = times(12, (i) => [i, i + 1, by(spelled(i + 1))]);
    expect(found(grid("Spelled", rows))).toEqual([]);
  });

  it("of a column of typed numbers with two or three formulas in it", () => {
    const rows = times(20, (i) => [i, i % 7 === 3 ? by(`A${i + 1}*2`) : 3 * i]);
    expect(found(grid("Typed", rows))).toEqual([]);
  });

  it("with a few remarks below the table", () => {
    const rows = times(8, (i) => [`n${i}`, i, by(`B${i + 2}*2`)]);
    const sums = [[], ["Total", by("SUM(B2:B9)"), by("SUM(C2:C9)")], ["read twice"], [4]];
    expect(found(grid("Remarks", [["Name", "Number", "Result"], ...rows, ...sums]))).toEqual([]);
  });
});

describe("the demo job", () => {
  it("has no departure of which no check tells, and one told as what it is", () => {
    const file = toJobFile(demo());
    const { findings } = checkJob(file, today);
    const departures = auditFormulas(file, findings).map(({ kind, cell }) => `${kind} ${cell}`);
    expect(departures).toEqual(["formula-typed-over R70"]);
    const cells = (found: readonly Finding[]) => found.map(({ sheet, cell }) => `${sheet}!${cell}`);
    expect(cells(checkJob(file, today, auditFormulas).findings)).toEqual(cells(findings));
  });
});
