import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { run } from "../../src/command";
import { demoName } from "../../workbooks/files";

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
  const { summary, said, findings = [] } = JSON.parse(text).files[0];
  const cells = (findings as { sheet: string; cell: string }[]).map(
    (each) => `${each.sheet}!${each.cell}`,
  );
  return { code, notes, summary, said: said as string[], cells };
}

const both = (...kinds: string[]) =>
  Promise.all(kinds.map((kind) => check(join(folder, demoName.replace("xlsx", kind)))));

describe("Files that are no .xlsx", () => {
  it("are read through LibreOffice: of .ods and .xls the same is told, but for what their formulas held", async () => {
    const profile = `-env:UserInstallation=file://${join(folder, "profile")}`;
    const demo = join(import.meta.dirname, "../../workbooks", demoName);
    for (const kind of ["ods", "xls"])
      execFileSync("soffice", [
        profile,
        "--headless",
        "--convert-to",
        kind,
        "--outdir",
        folder,
        demo,
      ]);
    const [xlsx, ods, xls] = [await check(demo), ...(await both("ods", "xls"))];
    const without = (...lost: string[]) => xlsx?.cells.filter((cell) => !lost.includes(cell));
    // A stored value that its formula does not give; in .xls also formulas that differ.
    expect(ods?.cells).toEqual(without("Fans!P104"));
    expect(xls?.cells).toEqual(without("Fans!P104", "Fans!P72", "Fans!Q74"));
    for (const { said, summary } of [ods, xls].flatMap((each) => each ?? [])) {
      expect(summary.measured).toBe(xlsx?.summary.measured);
      expect(said.join()).toMatch(/all formulas were worked out here/);
    }
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
