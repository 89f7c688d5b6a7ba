import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { checkFile } from "../../src/command/check-file";
import { tableReport } from "../../src/command/reports/table";
import { type CellSpec, Workbook } from "../../src/workbook";

const folder = mkdtempSync(join(tmpdir(), "fanrow-limits-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const today = new Date("2026-11-25T12:00:00Z");

/** A job of two fans, with what `edit` adds to its sheet. */
function job(name: string, edit: (rows: CellSpec[][]) => void): string {
  const rows: CellSpec[][] = [
    ["Dwelling", "Fan", "Pressure (Pa)", "Open area (in²)"].map((value) => ({ value })),
    ...["Lot 1", "Lot 2"].map((lot) => [lot, "B1", 4, 10].map((value) => ({ value }))),
  ];
  edit(rows);
  const book = Workbook.create();
  book.addSheet("Fans", { rows });
  const path = join(folder, name);
  writeFileSync(path, book.save());
  return path;
}

/** The findings on far cells, or why there are none. */
async function told(path: string) {
  const result = await checkFile(path, { today });
  if ("unreadable" in result) return result.unreadable;
  const { summary, findings } = result.check;
  const far = findings.filter(({ kind }) => kind === "cell-far");
  return { fans: summary.fans, far: far.map(({ cell, what }) => `${cell} ${what}`) };
}

const put = (rows: CellSpec[][], row: number, col: number, value: CellSpec["value"]) => {
  while (rows.length <= row) rows.push([]);
  const line = rows[row] as CellSpec[];
  while (line.length < col) line.push({});
  line[col] = { value };
};

describe("A stray cell", () => {
  it("in the last row is told of once, and the job is checked as it stands", async () => {
    const path = job("row.xlsx", (rows) => put(rows, 1_048_575, 6, "x"));
    expect(await told(path)).toEqual({
      fans: 2,
      far: ["G1048576 the cell stands far from all others, which end at D3"],
    });
  });

  it("in the last column too, though a second stands far below", async () => {
    const path = job("col.xlsx", (rows) => {
      put(rows, 0, 16_383, 1);
      put(rows, 49_999, 0, 1);
    });
    expect(await told(path)).toEqual({
      fans: 2,
      far: ["XFD1 the cell stands far from all others, which end at D3"],
    });
  });

  it("a little away from the rest is part of it", async () => {
    const path = job("near.xlsx", (rows) => put(rows, 300, 30, "note"));
    expect(await told(path)).toEqual({ fans: 2, far: [] });
  });
});

describe("A sheet that is larger than any job", () => {
  it("is refused with its size and what to do", async () => {
    const path = job("wide.xlsx", (rows) => {
      for (let row = 3; row < 30_000; row += 1_000)
        for (let col = 0; col < 300; col += 100) put(rows, row, col, 1);
    });
    expect(await told(path)).toContain("down to row 29004 and across to column GS");
  });
});

describe("What is no file to read", () => {
  it("is named as such at once: a pipe, a device", async () => {
    const pipe = join(folder, "pipe.xlsx");
    execFileSync("mkfifo", [pipe]);
    expect(await told(pipe)).toBe("is no plain file: name a workbook");
    expect(await told("/dev/zero")).toBe("is no plain file: name a workbook");
  });
});

describe("A workbook that asks for more than a reader can use", () => {
  it("of names that stand for names is read with their stored values", async () => {
    const workbook = Workbook.open(
      readFileSync(
        job("names.xlsx", (rows) => {
          for (const row of rows.slice(1)) row[4] = { formula: "Name0", value: 7 };
        }),
      ),
    );
    for (let i = 0; i < 60; i++) workbook.setName(`Name${i}`, `Name${i + 1}+Name${i + 1}`);
    workbook.setName("Name60", "1");
    const path = join(folder, "named.xlsx");
    writeFileSync(path, workbook.save());
    expect(await told(path)).toEqual({ fans: 2, far: [] });
  });

  it("with thousands of findings prints the first of them and says how many are left", async () => {
    const path = job("many.xlsx", (rows) => {
      for (let i = 0; i < 1200; i++)
        rows.push([`Lot ${i + 3}`, "B1", -4 - i / 100, 10].map((value) => ({ value })));
    });
    const result = await checkFile(path, { today });
    const report = tableReport({ width: 120, colour: false });
    const text = `${report.file(result)}${report.end()}`;
    expect(text).toMatch(/… and \d+ more, which --csv, --html and --json list/);
    expect(text.match(/→/g)?.length).toBeLessThanOrEqual(1500);
  });
});
