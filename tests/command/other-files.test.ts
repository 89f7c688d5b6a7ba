import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { run } from "../../src/command";
import { smallJob } from "../records/small-job";

const folder = mkdtempSync(join(tmpdir(), "fanrow-other-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function check(file: string) {
  let text = "";
  let notes = "";
  const code = await run(["--json", "--report-only", file], {
    out: (part: string) => {
      text += part;
    },
    note: (part: string) => {
      notes += part;
    },
    width: 110,
    isTerminal: false,
    colour: false,
    today: new Date("2026-11-25T12:00:00Z"),
  });
  return { code, notes, summary: JSON.parse(text).files[0].summary };
}

describe("Files that are no .xlsx", () => {
  it("are read through LibreOffice: an .ods gives the same as the workbook it was made from", async () => {
    const xlsx = join(folder, "job.xlsx");
    writeFileSync(xlsx, smallJob().save());
    const profile = `-env:UserInstallation=file://${join(folder, "profile")}`;
    execFileSync("soffice", [
      profile,
      "--headless",
      "--convert-to",
      "ods",
      "--outdir",
      folder,
      xlsx,
    ]);
    const [first, second] = [await check(xlsx), await check(join(folder, "job.ods"))];
    expect(second.code).toBe(0);
    expect(second.summary.fans).toBe(first.summary.fans);
    expect(second.summary.measured).toBe(first.summary.measured);
  });

  it("are read as one sheet where they are text, and refused in words where they are not", async () => {
    const csv = join(folder, "fans.csv");
    const rows = ["Dwelling,Fan,Room kind,Duty,Open area (in²),Pressure (Pa)"];
    for (let i = 1; i <= 5; i++) rows.push(`Lot ${i},B1,bathroom,on demand,24,${i}.1`);
    writeFileSync(csv, rows.join("\n"));
    expect((await check(csv)).summary.measured).toBe(5);
    const broken = join(folder, "broken.csv");
    writeFileSync(broken, 'a,b\n"c,d\n');
    expect((await check(broken)).notes).toContain("opens a quotation mark");
  });
});
