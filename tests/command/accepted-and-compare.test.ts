import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Papa from "papaparse";
import { afterAll, describe, expect, it } from "vitest";
import { auditFormulas } from "../../src/audit";
import { run, toJobFile } from "../../src/command";
import { acceptanceHeadings, checkJob, type Finding, fingerprintOf } from "../../src/job";
import { Workbook } from "../../src/workbook";
import { demo, today } from "../excel/demo";

const folder = mkdtempSync(join(tmpdir(), "fanrow-command-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function saved(name: string, workbook: Workbook): string {
  const path = join(folder, name);
  writeFileSync(path, workbook.save());
  return path;
}

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

/** The demo job with findings accepted: these, or all. */
function withAccepted(wanted: (finding: Finding) => boolean): Workbook {
  const workbook = demo();
  const file = toJobFile(workbook);
  const rows = checkJob(file, today, auditFormulas)
    .findings.filter(wanted)
    .map((finding) =>
      [
        ...[finding.sheet, finding.cell, finding.kind, finding.about],
        ...["duct <known>", "QT", today, fingerprintOf(file, finding)],
      ].map((value) => ({ value })),
    );
  workbook.addSheet("Accepted", {
    rows: [acceptanceHeadings.map((value) => ({ value })), ...rows],
  });
  return workbook;
}

describe("accepted findings in the reports", () => {
  const one = saved(
    "one.xlsx",
    withAccepted(({ cell }) => cell === "P57"),
  );

  it("stand apart in the table and are not counted with the open ones", async () => {
    const { code, out } = await call(one);
    expect(code).toBe(1);
    expect(out).toContain(
      "32 faults in 32 cells: 21 wrong, 5 doubtful, 6 missing; 4 results; 1 accepted",
    );
    expect(out.indexOf("Fans!P57")).toBeGreaterThan(out.indexOf("Accepted:"));
    expect(out).toContain("Accepted by QT: duct <known>");
  });

  it("carry their state in JSON and CSV, and stand under their own heading in HTML", async () => {
    const { files } = JSON.parse((await call("--json", one)).out);
    expect(files[0].summary.accepted).toBe(1);
    expect(files[0].settled).toEqual([]);
    expect(files[0].provenance.codes.inputs).toMatch(/^[0-9a-f]{8}$/);
    expect(files[0].results.find(({ cell }: Finding) => cell === "P57").accepted.initials).toBe(
      "QT",
    );
    const { data } = Papa.parse<Record<string, string>>((await call("--csv", one)).out, {
      header: true,
      skipEmptyLines: true,
    });
    expect(data.filter(({ state }) => state === "accepted")).toMatchObject([
      { cell: "P57", initials: "QT", reason: "duct <known>" },
    ]);
    const html = (await call("--html", one)).out;
    expect(html).toContain("<caption>Accepted</caption>");
    expect(html).toContain("Accepted by QT: duct &lt;known&gt;");
  });

  it("do not make the command fail when nothing is left open", async () => {
    const all = saved(
      "all.xlsx",
      withAccepted(() => true),
    );
    const { code, out } = await call(all);
    expect(out).toContain("nothing open; 37 accepted");
    expect(code).toBe(0);
  });

  it("do not change what the inputs' fingerprint says", async () => {
    const plain = saved("plain.xlsx", demo());
    const of = async (path: string) =>
      JSON.parse((await call("--json", path)).out).files[0].provenance.codes.inputs;
    expect(await of(one)).toBe(await of(plain));
  });
});

describe("two files compared", () => {
  const before = saved("before.xlsx", demo());
  const edited = demo();
  edited.sheet("Fans")?.setValue(2, 10, 5);
  edited.sheet("Job")?.setValue(1, 1, "62.2-2016");
  const after = saved("after.xlsx", edited);

  it("print what changed, and exit 1", async () => {
    const { code, out } = await call("--compare", before, after);
    expect(code).toBe(1);
    expect(out).toMatch(/typed +Fans!K3 +Lot 01, B2 +Reading 1 \(Pa\) +16\.2 → 5/);
    for (const line of out.split("\n")) expect(line.length).toBeLessThanOrEqual(110);
    const { changes } = JSON.parse((await call("--json", "--compare", before, after)).out);
    expect(changes.find(({ kind }: { kind: string }) => kind === "typed")).toMatchObject({
      sheet: "Fans",
      cell: "K3",
      before: "16.2",
      after: "5",
    });
    const { data } = Papa.parse<Record<string, string>>(
      (await call("--csv", "--compare", before, after)).out,
      { header: true, skipEmptyLines: true },
    );
    expect(data).toHaveLength(changes.length);
  });

  it("exit 0 when nothing changed, and when only a report is wanted", async () => {
    expect(await call("--compare", before, before)).toMatchObject({ code: 0 });
    expect((await call("--compare", "--report-only", before, after)).code).toBe(0);
  });

  it("have no codes where neither holds a row of a job", async () => {
    const budget = (value: number) => {
      const workbook = Workbook.create();
      workbook.addSheet("Budget", { rows: [[{ value: "Rent" }, { value }]] });
      return saved(`budget ${value}.xlsx`, workbook);
    };
    const { out } = await call("--compare", budget(900), budget(950));
    expect(out).toContain("900 → 950");
    expect(out).not.toMatch(/the same|code/);
  });

  it("want two files that can be read, and no HTML", async () => {
    expect((await call("--compare", before)).notes).toContain("--compare takes two files");
    expect((await call("--compare", "--html", before, after)).code).toBe(2);
    const { code, notes } = await call("--compare", before, join(folder, "none.xlsx"));
    expect(code).toBe(2);
    expect(notes).toContain("none.xlsx: was not found");
  });
});
