import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { run, toJobFile } from "../../src/command";
import { bringIn, fieldCopy } from "../../src/field";
import { readJob } from "../../src/job";
import { Workbook } from "../../src/workbook";
import { recalculated } from "../plain-copy/recalculated";
import { smallJob } from "../records/small-job";

const folder = mkdtempSync(join(tmpdir(), "fanrow-field-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const open = (file: string) => Workbook.open(new Uint8Array(readFileSync(file)));
const jobOf = (workbook: Workbook) => readJob(toJobFile(workbook));

/** Column of a heading on the sheet of fans. */
function columnOf(workbook: Workbook, heading: string): number {
  const sheet = workbook.sheet("Fans");
  for (let col = 0; col < (sheet?.colCount ?? 0); col++)
    if (String(sheet?.cell(0, col)?.value).startsWith(heading)) return col;
  throw new Error(`no column ${heading}`);
}

/** An invented job whose fans are still to be read. */
function unread(): Workbook {
  const workbook = smallJob();
  for (const heading of ["Box", "Openings in use", "Reading 1", "Reading 2", "Tester", "Date"])
    for (let row = 1; row < (workbook.sheet("Fans")?.rowCount ?? 0); row++)
      workbook.sheet("Fans")?.clear(row, columnOf(workbook, heading));
  return workbook;
}

async function command(...args: string[]) {
  let said = "";
  const print = (text: string) => {
    said += text;
  };
  const around = { out: print, note: print, width: 110, isTerminal: false, colour: false };
  const code = await run(args, { ...around, today: new Date("2026-11-25T12:00:00Z") });
  return { code, said };
}

describe("A field copy", () => {
  const jobFile = join(folder, "job.xlsx");
  const copyFile = join(folder, "copy.xlsx");
  const typedFile = join(folder, "typed.xlsx");
  writeFileSync(jobFile, unread().save());

  it("holds native formulas only, nothing hidden, and the drop-downs of its boxes", async () => {
    expect((await command("--field", copyFile, jobFile)).code).toBe(0);
    const copy = open(copyFile);
    for (const sheet of copy.sheets) {
      expect([sheet.name, sheet.state, sheet.hiddenRows.size]).toEqual([sheet.name, "visible", 0]);
      for (const cell of sheet.cells()) expect(cell.formula ?? "").not.toMatch(/FANROW/);
    }
    const lists = copy.sheet("Fans")?.validations.map((each) => JSON.stringify(each)) ?? [];
    expect(lists.some((list) => list.includes("Box 1"))).toBe(true);
    expect(copy.sheets[0]?.name).toBe("Fans");
  });

  it("shows flow, status and verdict in another program as soon as a pressure is typed", async () => {
    const copy = fieldCopy(jobOf(unread()));
    const fans = copy.sheet("Fans");
    fans?.setValue(1, columnOf(copy, "Box"), "Box 1");
    fans?.setValue(1, columnOf(copy, "Openings in use"), "A");
    fans?.setValue(1, columnOf(copy, "Reading 1"), 4);
    fans?.setValue(1, columnOf(copy, "Tester"), "T. Wren");
    const again = recalculated({ "typed.xlsx": copy.save() })["typed.xlsx"] as Workbook;
    writeFileSync(typedFile, again.save());
    const value = (heading: string) =>
      again.sheet("Fans")?.cell(1, columnOf(again, heading))?.value;
    // cfm = 1.07 · in² · √Pa (trade form, common practice): 24 in² at 4 Pa.
    expect(value("Flow")).toBeCloseTo(51.36, 9);
    expect(value("Range status")).toBe("in range");
    expect(value("Verdict")).toBe("meets");
  });

  it("brings back what was typed, by dwelling and fan, and leaves the job's file as it was", async () => {
    const before = readFileSync(jobFile);
    const into = join(folder, "filled.xlsx");
    const { code, said } = await command("--bring", typedFile, "--into", into, jobFile);
    expect([code, said]).toEqual([0, expect.stringContaining("4 values placed")]);
    expect(readFileSync(jobFile).equals(before)).toBe(true);
    const filled = jobOf(open(into));
    expect(filled.fans?.readings(0)).toEqual([4]);
    expect(filled.fans?.table.text("tester", 0)).toBe("T. Wren");
  });

  it("is quiet of a fan that the job lists twice where nothing was typed anew, and tells a day as a date", () => {
    const twice = smallJob();
    for (const heading of ["Dwelling", "Fan"])
      for (const row of [1, 2])
        twice.sheet("Fans")?.setValue(row, columnOf(twice, heading), `${heading} 1`);
    const job = jobOf(twice);
    expect(bringIn(job, jobOf(fieldCopy(job))).left).toEqual([]);
    const copy = fieldCopy(job);
    copy.sheet("Fans")?.setValue(2, columnOf(copy, "Date"), 46354);
    expect(bringIn(job, jobOf(copy)).left).toMatchObject([
      {
        what: expect.stringContaining("Date 2026-11-28"),
        why: expect.stringMatching(/more than once/),
      },
    ]);
  });

  it("shows what differs and what has no place, and never writes over either by itself", () => {
    const job = smallJob();
    const copy = fieldCopy(jobOf(job));
    copy.sheet("Fans")?.setValue(1, columnOf(copy, "Reading 1"), 5.5);
    copy.sheet("Fans")?.setValue(2, columnOf(copy, "Fan"), "X9");
    const found = bringIn(jobOf(job), jobOf(copy));
    expect(found.fresh).toEqual([]);
    expect(found.differing.map(({ value, before }) => [value, before])).toEqual([[5.5, 4.1]]);
    expect(found.left[0]?.why).toMatch(/no such fan/);
    expect(found.left[0]?.what).toContain("Reading 1");
  });
});
