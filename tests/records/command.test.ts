import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { run } from "../../src/command";
import { Workbook } from "../../src/workbook";
import { smallJob } from "./small-job";

const folder = mkdtempSync(join(tmpdir(), "fanrow-record-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const job = join(folder, "job.xlsx");
writeFileSync(job, smallJob().save());
const out = join(folder, "record.xlsx");

async function call(...args: string[]) {
  let notes = "";
  const code = await run(args, {
    out: () => {},
    note: (text) => {
      notes += text;
    },
    width: 110,
    isTerminal: false,
    colour: false,
    today: new Date("2026-11-25T12:00:00Z"),
  });
  return { code, notes };
}

describe("--record", () => {
  it("writes a workbook that holds the records and nothing else", async () => {
    const before = readFileSync(job);
    expect((await call("--record", out, "--report-only", job)).code).toBe(0);
    const made = Workbook.open(new Uint8Array(readFileSync(out)));
    expect(made.sheets.map(({ name }) => name)).toEqual(["Record", "Record Lot 1", "Record Lot 2"]);
    expect(readFileSync(job)).toEqual(before);
  });

  it("writes the records of several jobs side by side", async () => {
    const other = join(folder, "other.xlsx");
    writeFileSync(other, smallJob({ settings: { "Job name": "Another" } }).save());
    expect((await call("--record", out, "--replace", "--report-only", job, other)).code).toBe(0);
    const made = Workbook.open(new Uint8Array(readFileSync(out)));
    expect(made.sheets).toHaveLength(6);
    const jobs = made.sheets.map((sheet) => sheet.cell(1, 0)?.value);
    expect(new Set(jobs)).toEqual(new Set(["Two homes & a box", "Another"]));
  });

  it("never writes over a file that is checked, and says what it cannot write", async () => {
    const same = await call("--record", job, job);
    expect([same.code, same.notes]).toEqual([2, expect.stringContaining("another name")]);
    const kind = await call("--record", join(folder, "a.pdf"), job);
    expect([kind.code, kind.notes]).toEqual([2, expect.stringContaining(".xlsx")]);
    const nowhere = await call("--record", join(folder, "none/a.xlsx"), job);
    expect([nowhere.code, nowhere.notes]).toEqual([2, expect.stringContaining("no such folder")]);
    const nothing = join(folder, "nothing.xlsx");
    expect((await call("--record", nothing, join(folder, "missing.xlsx"))).code).toBe(2);
    expect(existsSync(nothing)).toBe(false);
  });
});
