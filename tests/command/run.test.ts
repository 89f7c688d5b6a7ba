import { chmodSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Papa from "papaparse";
import { afterAll, describe, expect, it } from "vitest";
import { run } from "../../src/command";
import { Workbook } from "../../src/workbook";
import { blankName, demoName } from "../../workbooks/files";

const workbooks = join(import.meta.dirname, "../../workbooks");
const demo = join(workbooks, demoName);
const blank = join(workbooks, blankName);
const folder = mkdtempSync(join(tmpdir(), "fanrow-command-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function call(...args: string[]) {
  let out = "";
  let notes = "";
  const code = await run(args, {
    out: (text) => {
      out += text;
    },
    note: (text) => {
      notes += text;
    },
    width: 110,
    isTerminal: false,
    colour: false,
    today: new Date("2026-11-25T12:00:00Z"),
  });
  return { code, out, notes };
}

function file(name: string, content: string | Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

describe("the exit status", () => {
  it("is 0 when nothing is found, 1 when something is, 2 when a file cannot be read", async () => {
    expect((await call(blank)).code).toBe(0);
    expect((await call(demo)).code).toBe(1);
    expect((await call(demo, join(folder, "none.xlsx"))).code).toBe(2);
  });

  it("is 0 for a report only, unless a file cannot be read", async () => {
    expect((await call("--report-only", demo)).code).toBe(0);
    expect((await call("--report-only", join(folder, "none.xlsx"))).code).toBe(2);
  });

  it("is 2 for a call that makes no sense, with the usage beside the reason", async () => {
    for (const args of [[], ["--json", "--csv", demo], ["--no-such-option", demo]]) {
      const { code, notes } = await call(...args);
      expect(code).toBe(2);
      expect(notes).toContain("npm run check -- [options] FILE");
    }
    expect((await call("--help")).out).toContain("Exit status");
  });
});

describe("the table", () => {
  it("counts by cause, then lists each finding under its cause with its cell and mend", async () => {
    const { out } = await call(demo);
    expect(out).toContain("104 fans in 27 dwellings, 103 measured, 17 openings; IRC-2021, ip");
    expect(out).toMatch(/pressure above the window\n +Fans!K3 +Lot 01, B2 +16\.2 Pa is above/);
    expect(out).toContain("→ Open B (23.8 in²), expect about 4.5 Pa, and read again.");
    expect(out).toContain("32 faults in 32 cells: 21 wrong, 5 doubtful, 6 missing; 5 results");
  });

  it("fits the width it is given", async () => {
    const { out } = await call(demo);
    for (const line of out.split("\n")) expect(line.length).toBeLessThanOrEqual(110);
  });
});

describe("a name that is none", () => {
  it("is refused before anything is read", async () => {
    expect(await call("--json", "--out", " ", demo)).toMatchObject({ code: 2, out: "" });
    expect((await call("--json", "--out", "", demo)).notes).toContain(
      "--out wants the name of a file",
    );
  });
});

describe("the machine-readable reports", () => {
  it("JSON holds each finding with its sheet, cell and kind", async () => {
    const { files } = JSON.parse((await call("--json", demo)).out);
    expect(files[0].findings).toHaveLength(32);
    const { findings } = files[0];
    const sheets = findings.map(({ sheet }: { sheet: string }) => sheet);
    expect([...new Set(sheets)]).toEqual(["Dwellings", "Boxes", "Fans"]);
    expect(findings.find(({ cell }: { cell: string }) => cell === "K9")).toMatchObject({
      sheet: "Fans",
      cells: [{ sheet: "Fans", cell: "K9" }],
      kind: "pressure-negative",
      row: 9,
    });
    const { results } = files[0];
    expect(results.find(({ cell }: { cell: string }) => cell === "K3")).toMatchObject({
      outcome: "pressure-above",
      sheet: "Fans",
      cell: "K3",
      fan: "Lot 01, B2",
    });
    expect(files[0].fit.map(({ kind }: { kind: string }) => kind).sort()).toEqual([
      "boxes",
      "dwellings",
      "fans",
    ]);
  });

  it("CSV has a row a finding and makes formula-like text harmless", async () => {
    const book = Workbook.create();
    book.addSheet("Fans", {
      rows: [
        ["Dwelling", "Fan", "Pressure (Pa)", "Open area (in²)"].map((value) => ({ value })),
        ["=1+1", "B1", 12, 10].map((value) => ({ value })),
      ],
    });
    const path = file("formula.xlsx", book.save());
    const { data } = Papa.parse<Record<string, string>>((await call("--csv", demo, path)).out, {
      header: true,
      skipEmptyLines: true,
    });
    expect(data.filter((row) => row.file === demo)).toHaveLength(37);
    expect(data.find((row) => row.file === path)?.about).toBe("'=1+1, B1");
  });

  it("HTML stands alone, runs nothing and shows text as text", async () => {
    const book = Workbook.create();
    const evil = '<img src=x onerror="alert(1)">';
    book.addSheet("Fans", {
      rows: [
        ["Dwelling", "Fan", "Pressure (Pa)", "Open area (in²)"].map((value) => ({ value })),
        [evil, "B1", 12, 10].map((value) => ({ value })),
      ],
    });
    const { out } = await call("--html", file("markup.xlsx", book.save()));
    expect(out).not.toContain("<img");
    expect(out).toContain("&lt;img src=x");
    expect(out).not.toMatch(/<script|<link|https?:\/\//);
  });

  it("go to a file with --out, and say so when they cannot", async () => {
    const path = join(folder, "report.html");
    expect(await call("--html", "--out", path, demo)).toMatchObject({ code: 1, out: "" });
    expect(readFileSync(path, "utf8")).toContain("Fans!K3");
    const { code, notes } = await call("--out", join(folder, "no", "such", "folder"), demo);
    expect(code).toBe(2);
    expect(notes).toContain("cannot be written");
  });
});

describe("a file that cannot be read", () => {
  const sound = readFileSync(demo);
  const ole = (text: string) =>
    Buffer.concat([
      Buffer.from("d0cf11e0a1b11ae1", "hex"),
      Buffer.alloc(600),
      Buffer.from(text, "utf16le"),
      Buffer.alloc(600),
    ]);
  const cases: [string, () => string, RegExp][] = [
    ["missing", () => join(folder, "none.xlsx"), /was not found/],
    ["a folder", () => folder, /is a folder/],
    ["empty", () => file("empty.xlsx", ""), /empty/i],
    [
      "truncated",
      () => file("cut.xlsx", sound.subarray(0, 9000)),
      /cut short|truncated|incomplete|not complete/i,
    ],
    ["a text file", () => file("text.xlsx", "Dwelling,Fan\nLot 1,B1\n"), /not an \.?xlsx|not a/i],
    ["an old .xls", () => file("old.xls", ole("Workbook")), /\.xls/],
    ["password-protected", () => file("locked.xlsx", ole("EncryptedPackage")), /password/i],
    ["an owner note", () => file("~$job.xlsx", "x"), /leaves beside an open workbook/],
  ];

  it.each(cases)("(%s) gets one clear line", async (_, path, line) => {
    const name = path();
    const { code, notes } = await call(name);
    expect(code).toBe(2);
    expect(notes.trim().split("\n")).toHaveLength(1);
    expect(notes).toContain(`${name}: `);
    expect(notes).toMatch(line);
  });

  it("never stops the rest", async () => {
    const bad = file("bad.xlsx", "nothing");
    const { code, out, notes } = await call(bad, demo, join(folder, "none.xlsx"), blank);
    expect(code).toBe(2);
    expect(notes.trim().split("\n")).toHaveLength(2);
    expect(out).toContain("32 faults in 32 cells");
    expect(out).toContain("4 files, 32 faults, 5 results, 2 could not be read");
  });

  it("may be one that the system keeps from us", async () => {
    const path = file("secret.xlsx", sound);
    chmodSync(path, 0o000);
    const { code, notes } = await call(path);
    // The administrator may read any file.
    if (process.getuid?.() === 0) expect(code).toBe(1);
    else expect(notes).toMatch(/may not be read/);
  });

  it("may be too large to be a job", async () => {
    const path = join(folder, "large.xlsx");
    mkdirSync(folder, { recursive: true });
    writeFileSync(path, Buffer.alloc(101 * 2 ** 20));
    expect((await call(path)).notes).toMatch(/is 101 MB: workbooks of up to 100 MB are read/);
  });
});

describe("several files on a terminal", () => {
  it("show their progress and clear it again", async () => {
    let notes = "";
    await run([blank, blank], {
      out: () => {},
      note: (text) => {
        notes += text;
      },
      width: 110,
      isTerminal: true,
      colour: true,
      today: new Date(),
    });
    expect(notes).toContain("1 of 2");
    expect(notes).toContain("2 of 2");
    expect(notes.endsWith("\r\u001b[K")).toBe(true);
  });
});

describe("the trace of a cell", () => {
  it("tells how the cell comes to its value, back to what was typed", async () => {
    const { code, out } = await call("--trace", "Fans!S3", demo);
    expect(code).toBe(0);
    expect(out).toMatch(/^Fans!S3, Verdict: "out of range"\n {2}=FANROW\.VERDICT\(/);
    expect(out).toMatch(/\nFans!P3, Flow \(cfm\): 54\.1748\n/);
    expect(out).toContain("Q = K · A · √ΔP = 1.07 · 12.5664 · √16.2333 = 54.1748 cfm");
    expect(out).toContain("\nFans!K3, Reading 1 (Pa): 16.2\n  typed value, no formula\n");
  });

  it("is JSON with --json, and goes to a file with --out", async () => {
    const path = join(folder, "trace.json");
    expect(await call("--json", "--trace", "'Fans'!$P$3", "--out", path, demo)).toEqual({
      code: 0,
      out: "",
      notes: "",
    });
    const { format, steps } = JSON.parse(readFileSync(path, "utf8"));
    expect(format).toBe(1);
    expect(steps[0]).toMatchObject({
      name: "Fans!P3",
      kind: "ours",
      agreement: { state: "agrees" },
    });
    expect(steps[0].calls[0].result).toBe("54.1748 cfm");
  });

  it.each([
    ["a sheet that is not there", "Fens!S3", 'no sheet "Fens": the workbook has Job, Dwellings'],
    [
      "a cell outside the used range",
      "Fans!S3000",
      "no cell Fans!S3000: the sheet is used from A1",
    ],
    [
      "a text that names no cell",
      "S3",
      "names no cell: write the sheet and the cell, such as Fans!P3",
    ],
    ["a range", "Fans!S3:S9", "names no cell"],
  ])("says in one line of %s, with status 2", async (_, cell, line) => {
    const { code, out, notes } = await call("--trace", cell, demo);
    expect(code).toBe(2);
    expect(out).toBe("");
    expect(notes.trim().split("\n")).toHaveLength(1);
    expect(notes).toContain(line);
  });

  it("looks at one file, and prints text or JSON", async () => {
    for (const args of [
      ["--trace", "Fans!S3", demo, blank],
      ["--trace", "Fans!S3", "--csv", demo],
    ])
      expect(await call(...args)).toMatchObject({ code: 2, out: "" });
    const missing = await call("--trace", "Fans!S3", join(folder, "none.xlsx"));
    expect(missing).toMatchObject({ code: 2, out: "" });
    expect(missing.notes).toMatch(/none\.xlsx: was not found/);
  });
});
