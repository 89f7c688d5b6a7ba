import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { visible, visibleJson } from "../../src/cells";
import { Workbook } from "../../src/workbook";
import { demoName } from "../../workbooks/files";

const root = join(import.meta.dirname, "../..");
const demo = join(root, "workbooks", demoName);
const folder = mkdtempSync(join(tmpdir(), "fanrow-streams-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** The command as a user starts it, its streams going where the shell says. */
function shell(line: string, ...args: string[]) {
  const launch = join(root, "src/command/launch.mjs");
  const { status, stdout, stderr } = spawnSync(
    "bash",
    ["-c", line, process.execPath, launch, ...args],
    { encoding: "utf8" },
  );
  return { status, stdout, stderr };
}

describe("A stream that takes no more", () => {
  it("on standard output gives one line and status 2, never that of something found", () => {
    const { status, stderr } = shell(`"$0" "$@" > /dev/full`, demo);
    expect(status).toBe(2);
    expect(stderr).toBe(
      "standard output: cannot be written: the disk is full. What was there is as it was\n",
    );
  });

  it("on the error stream changes nothing of what is printed", () => {
    const { status, stdout } = shell(`"$0" "$@" 2> /dev/full`, demo, join(folder, "none.xlsx"));
    expect(status).toBe(2);
    expect(stdout).toMatch(/2 files, \d+ faults, \d+ results, 1 could not be read\n$/);
  });

  it("closed by a reader that has seen enough ends it without a word", () => {
    expect(shell(`"$0" "$@" | head -1`, demo).stderr).toBe("");
  });
});

describe("Targets of the command", () => {
  it("are refused before any work where they are a file that is checked", () => {
    const job = join(folder, "job.xlsx");
    writeFileSync(job, readFileSync(demo));
    for (const args of [
      ["--json", "--out", job, job],
      ["--values", job, "--replace", job],
      ["--plain", job, "--replace", job],
      ["--record", job, "--replace", job],
    ]) {
      const { status, stdout, stderr } = shell(`"$0" "$@"`, ...args);
      expect([status, stdout]).toEqual([2, ""]);
      expect(stderr).toBe(`${job}: is the same file as ${job}: give another name\n`);
    }
    expect(readFileSync(job).equals(readFileSync(demo))).toBe(true);
  });

  it("may not be one file for two reports", () => {
    const out = join(folder, "both.xlsx");
    const { status, stderr } = shell(`"$0" "$@"`, "--out", out, "--record", out, demo);
    expect([status, stderr]).toEqual([
      2,
      `${out}: is named for two reports: give each its own name\n`,
    ]);
  });
});

describe("Text from cells and names", () => {
  const acting = "\u001b[2J\u009b31m\u0007\r\n\u202eevil\u2066";
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what may not be there.
  const harmful = /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/;

  it("is shown with visible marks in every report and on the error stream", () => {
    const book = Workbook.create();
    book.addSheet("Fans", {
      rows: [
        ["Dwelling", "Fan", "Pressure (Pa)", "Open area (in²)"].map((value) => ({ value })),
        [`Lot ${acting}`, `B1${acting}`, 12, 10].map((value) => ({ value })),
      ],
    });
    const named = join(folder, "a\u001b[31m\nb\u202e.xlsx");
    writeFileSync(named, book.save());
    const missing = join(folder, "no\u001b[31m\rne.xlsx");
    for (const option of ["--report-only", "--json", "--csv", "--html"]) {
      const { stdout, stderr } = shell(`"$0" "$@"`, option, named, missing);
      expect(stdout.replaceAll("\r\n", "\n")).not.toMatch(harmful);
      expect(stdout).toMatch(/B1(␛|\\u001b)/);
      expect(stderr).not.toMatch(harmful);
      expect(stderr.trim().split("\n")).toHaveLength(1);
      expect(stderr).toContain("no␛[31m␍ne.xlsx: was not found");
    }
    for (const args of [
      ["--trace", "Fans!A2", named],
      ["--trace", `Fans!A2${acting}`, named],
      ["--compare", named, demo],
      ["--record", named, named],
    ]) {
      const { stdout, stderr } = shell(`"$0" "$@"`, ...args);
      expect(stdout + stderr).not.toMatch(harmful);
      expect(stdout + stderr).toMatch(/␛/);
    }
  });

  it("keeps every other character, and JSON says the same as before", () => {
    const plain = "Bad Überall, 24 in² · √4 → 𝟙 👩‍🔧 ‘quoted’\u00a0日本";
    expect(visible(plain)).toBe(plain);
    expect(visible("\u001b\u007f\u0085\u2028")).toBe("␛␡‹U+0085›‹U+2028›");
    expect(JSON.parse(visibleJson(JSON.stringify({ acting, tag: "\u{e0041}" }, null, 2)))).toEqual({
      acting,
      tag: "\u{e0041}",
    });
  });
});

describe("The command under the whole of its options", () => {
  it("writes the same report to a file as to the stream", () => {
    const out = join(folder, "report.json");
    const printed = execFileSync(
      process.execPath,
      [join(root, "src/command/launch.mjs"), "--report-only", "--json", demo],
      { encoding: "utf8" },
    );
    expect(shell(`"$0" "$@"`, "--report-only", "--json", "--out", out, demo).status).toBe(0);
    expect(readFileSync(out, "utf8")).toBe(printed);
  });
});
