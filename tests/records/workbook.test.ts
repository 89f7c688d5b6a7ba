import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { printWorkbook } from "../../src/command/record";
import { addPlan, allRecords, jobRecord, type SheetPlan } from "../../src/records";
import { Workbook } from "../../src/workbook";
import { checked, smallJob } from "./small-job";

const pairs = [1.2, 2, 3, 4.5, 6, 7.5].map((pressure): [string, number, number, number] => [
  "A",
  24,
  pressure,
  26 * Math.sqrt(pressure),
]);
const workbook = smallJob({ pairs });
const check = checked(workbook);

describe("Records in a workbook", () => {
  it("come beside its sheets, under names that are free", () => {
    const again = Workbook.open(workbook.save());
    const before = again.sheets.map(({ name }) => name);
    again.addSheet("Record", { rows: [[{ value: "someone's own" }]] });
    const plans = allRecords(check);
    const first = plans.map((plan) => addPlan(again, plan));
    expect(first).toEqual(["Record 2", "Record Lot 1", "Record Lot 2", "Proof Box 1"]);
    const saved = Workbook.open(again.save());
    expect(saved.sheets.map(({ name }) => name)).toEqual([...before, "Record", ...first]);
    expect(saved.sheet("Record")?.cell(0, 0)?.value).toBe("someone's own");
    expect(saved.sheet("Proof Box 1")?.charts).toHaveLength(1);
    expect(again.partNames().filter((name) => name.includes("charts/chart"))).toHaveLength(1);
  });

  it("hold what the plan says, under its looks", () => {
    const made = Workbook.create();
    const plan = jobRecord(check);
    addPlan(made, plan);
    const sheet = Workbook.open(made.save()).sheet("Record");
    plan.rows.forEach(({ cells }, row) => {
      cells.forEach((cell, col) => {
        expect(sheet?.cell(row, col)?.value ?? null).toBe(cell?.value ?? null);
      });
    });
    expect(sheet?.merges).toEqual(plan.merges);
    expect(made.styleSpec(sheet?.cell(0, 0)?.style ?? 0)).toMatchObject({ bold: true, size: 16 });
  });

  it("cut a text that is longer than a cell holds", () => {
    const made = Workbook.create();
    const plan = jobRecord(check);
    const [first, ...rows] = plan.rows;
    const cells = [{ ...first!.cells[0]!, value: "x".repeat(40_000) }];
    addPlan(made, { ...plan, rows: [{ ...first!, cells }, ...rows] });
    expect(made.sheets[0]?.cell(0, 0)?.value).toBe(`${"x".repeat(32_766)}…`);
  });
});

/** The sheets of a file in LibreOffice: an independent reader, which lays out pages and draws charts. */
describe("Records in LibreOffice", () => {
  const folder = mkdtempSync(join(tmpdir(), "fanrow-records-"));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  const convert = (file: string, to: string): string => {
    const profile = `-env:UserInstallation=file://${join(folder, "profile")}`;
    const target = ["--convert-to", to, "--outdir", folder, join(folder, file)];
    execFileSync("soffice", [profile, "--headless", ...target], { stdio: "pipe" });
    return readFileSync(join(folder, file.replace(".xlsx", `.${to}`)), "latin1");
  };

  it("print a page for each dwelling and each proof, and the job on one or two", () => {
    writeFileSync(join(folder, "records.xlsx"), printWorkbook(allRecords(check)));
    const pages = convert("records.xlsx", "pdf").match(/\/Type\s*\/Page\b/g) ?? [];
    const others = allRecords(check).length - 1;
    expect(pages.length).toBeGreaterThanOrEqual(others + 1);
    expect(pages.length).toBeLessThanOrEqual(others + 2);
  });

  it("show the chart of a proof from its cells", () => {
    const flat = convert("records.xlsx", "fods");
    const series = flat.match(/<chart:series [^>]*chart:values-cell-range-address="[^"]*"/g) ?? [];
    expect(series).toHaveLength(4);
    expect(series[0]).toContain("Proof Box 1");
  });
});

describe("Every plan", () => {
  it("has its mark in A1, by which it is known again", () => {
    for (const plan of allRecords(check) as SheetPlan[])
      expect(plan.rows[0]?.cells[0]?.value).toBe(plan.mark);
  });
});
