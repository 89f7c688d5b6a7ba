import { describe, expect, it } from "vitest";
import {
  type Change,
  checkJob,
  type Finding,
  fingerprintOf,
  type JobFile,
  provenanceOf,
} from "../../src/job";
import { acceptedBy, canAccept, gapsOf } from "../../src/pane/model/acceptance";
import { announceChange, announceCheck, openAndAccepted } from "../../src/pane/model/announce";
import { countSorts, firstChanges, groupChanges, sortOf } from "../../src/pane/model/changes-view";
import { copyFileName } from "../../src/pane/model/copy-name";
import { provenanceView } from "../../src/pane/model/provenance-view";
import { admissions, sheetsOf } from "../../src/pane/model/record-choice";
import { boxSheet, dwellingSheet, fanSheet, fileOf, goodFan, gridOf, jobSheet } from "./job-file";

const fan = (pressure: number) =>
  goodFan.map((cell, col) => (col === 7 || col === 8 ? pressure : cell));
const sheets = (pressure: number) => [jobSheet, dwellingSheet, boxSheet, fanSheet(fan(pressure))];
const check = (file: JobFile) => checkJob(file, 46_000);
const reversed = (file: JobFile): Finding => {
  const found = check(file).findings.find(({ kind }) => kind === "pressure-negative");
  if (!found) throw new Error("no reversed pressure was found");
  return found;
};

/** The job with the reversed pressure accepted as it stood in `then`. */
function accepted(now: number, then = now, reason = "hoses swapped on purpose"): JobFile {
  const finding = reversed(fileOf(...sheets(then)));
  const { sheet, cell, kind, about } = finding;
  const fingerprint = fingerprintOf(fileOf(...sheets(then)), finding);
  const row = [sheet, cell, kind, about, reason, "AB", 45_931, fingerprint];
  const head = ["Sheet", "Cell", "Kind", "About", "Reason", "Initials", "Date", "Fingerprint"];
  return fileOf(...sheets(now), gridOf("Accepted", [head, row]));
}

describe("taking a finding as it is", () => {
  it("needs a reason and initials, and says of each that is missing what it is for", () => {
    expect(gapsOf({ reason: " ", initials: "" })).toEqual({
      reason: "Say why the row is right as it is.",
      initials: "Say who accepts it.",
    });
    expect(gapsOf({ reason: "read twice", initials: "AB" })).toEqual({ reason: "", initials: "" });
  });

  it("is offered for a finding at a cell, and not for an acceptance that is itself faulty", () => {
    const finding = reversed(fileOf(...sheets(-4)));
    expect(canAccept(finding)).toBe(true);
    expect(canAccept({ ...finding, cell: "" })).toBe(false);
    expect(canAccept({ ...finding, kind: "acceptance-incomplete" })).toBe(false);
  });

  it("names who and the day, in workbooks that count from 1904 too", () => {
    const by = { reason: "r", initials: "AB", date: 45_931 };
    expect(acceptedBy(by)).toBe("AB on 2025-10-01");
    expect(acceptedBy({ ...by, date: 45_931 - 1462 }, 1462)).toBe("AB on 2025-10-01");
    expect(acceptedBy({ ...by, date: "last week" })).toBe("AB on last week");
    expect(acceptedBy({ ...by, date: null })).toBe("AB");
  });

  it("counts it apart from those that are open", () => {
    const { summary } = check(accepted(-4));
    expect(openAndAccepted(summary)).toMatch(/^\d+ open, 1 accepted$/);
    expect(announceCheck(check(accepted(-4)))).toMatch(/, 1 accepted\.$/);
    expect(openAndAccepted(check(fileOf(...sheets(-4))).summary)).not.toContain("accepted");
  });

  it("is not announced as cleared, and as open again once its row has changed", () => {
    const [open, taken] = [check(fileOf(...sheets(-4))), check(accepted(-4))];
    expect(announceChange(open, taken)).toBe("");
    expect(announceChange(taken, check(accepted(-4.5, -4)))).toMatch(/^1 open again\. Now /);
  });
});

describe("what a record has to admit", () => {
  it("is nothing for a clean job", () => {
    const clean = check(fileOf(...sheets(2)));
    const finished = { ...clean, findings: [], summary: { ...clean.summary, bySeverity: none } };
    expect(admissions(finished)).toEqual([]);
  });

  it("tells of open findings, of acceptances that are incomplete and of those that lapsed", () => {
    const [open] = admissions(check(fileOf(...sheets(-4))));
    expect(open).toMatch(/^\d+ findings? (is|are) open\.$/);
    expect(admissions(check(accepted(-4, -4, "")))).toContain(
      "1 acceptance is incomplete and counts for nothing.",
    );
    expect(admissions(check(accepted(-4.5, -4)))).toContain(
      "1 acceptance no longer holds: its row has changed since.",
    );
  });

  it("counts the sheets that a choice comes to", () => {
    const choice = { job: true, dwellings: "all", proofs: true, papers: false } as const;
    expect(sheetsOf(choice, { dwellings: 27, proofs: 2, papers: 3 })).toBe(30);
    expect(sheetsOf({ ...choice, papers: true }, { dwellings: 27, proofs: 2, papers: 3 })).toBe(33);
    expect(
      sheetsOf(
        { ...choice, dwellings: "none", proofs: false },
        { dwellings: 27, proofs: 2, papers: 3 },
      ),
    ).toBe(1);
    expect(
      sheetsOf(
        { ...choice, job: false, dwellings: { name: "Lot 1" } },
        { dwellings: 27, proofs: 0, papers: 0 },
      ),
    ).toBe(1);
  });
});

const none = { wrong: 0, doubtful: 0, missing: 0, result: 0 };

describe("the changes since an older file", () => {
  const { job } = check(fileOf(...sheets(2)));
  const change = (own: Partial<Change>): Change => ({
    kind: "typed",
    sheet: "Fans",
    cell: "H2",
    about: "Lot 1, B1",
    field: "Reading 1 (Pa)",
    before: "2",
    after: "-3",
    rows: 1,
    ...own,
  });

  it("are sorted as a reader asks for them; a row's constant is typed, the job's a setting", () => {
    expect(sortOf(change({ kind: "constant" }))).toBe("typed");
    expect(sortOf(change({ kind: "constant", about: "", sheet: "Job" }))).toBe("settings");
    const counts = countSorts([
      change({}),
      change({ kind: "result" }),
      change({ kind: "edition" }),
    ]);
    expect(counts).toEqual({ typed: 1, computed: 1, formula: 0, settings: 1, findings: 0 });
  });

  it("stand by sheet in the workbook's order and then by row, a row's findings with it", () => {
    const groups = groupChanges(
      [
        change({ kind: "finding gone", cell: "H9", before: "no pressure", after: "" }),
        change({}),
        change({ cell: "H1", about: "Lot 0, B1" }),
        change({ kind: "setting", sheet: "Job", cell: "B3", about: "", field: "Units" }),
      ],
      job,
    );
    expect(groups.map(({ title, place }) => [title, place])).toEqual([
      ["Job, row 3", ""],
      ["Lot 0, B1", "Fans, row 1"],
      ["Lot 1, B1", "Fans, row 2"],
    ]);
    // A cell of the older file is nowhere to go to.
    expect(groups[2]?.changes.map(({ title, cell }) => [title, cell])).toEqual([
      ["Gone: Reading 1 (Pa)", ""],
      ["Reading 1 (Pa)", "H2"],
    ]);
  });

  it("say of a row that is gone that it stood in the older file", () => {
    const [group] = groupChanges([change({ kind: "row removed", before: "", after: "" })], job);
    expect(group?.place).toBe("Fans, row 2 of the older file");
    expect(group?.changes[0]).toMatchObject({ title: "Row removed", before: "", after: "" });
  });

  it("write blank for nothing, few digits for many, and texts as they are", () => {
    const view = (before: string, after: string) => {
      const [group] = groupChanges([change({ before, after })], job);
      return [group?.changes[0]?.before, group?.changes[0]?.after];
    };
    expect(view("", "51.36000000000001")).toEqual(["blank", "51.36"]);
    expect(view("-4.1", "007")).toEqual(["−4.1", "007"]);
  });

  it("can be narrowed to some sorts and cut to a page", () => {
    const changes = [change({}), change({ kind: "result" }), change({ kind: "formula", rows: 9 })];
    const [group] = groupChanges(changes, job, ["formula"]);
    expect(group?.changes.map(({ note }) => note)).toEqual(["alike in 9 rows"]);
    const page = firstChanges(groupChanges(changes, job), 2);
    expect(page.flatMap((each) => each.changes)).toHaveLength(2);
  });
});

describe("what a check rests on", () => {
  it("names version, edition, rules with their marks, constants, window and codes", () => {
    const { job } = check(fileOf(...sheets(2)));
    const lines = provenanceView(provenanceOf(job));
    const line = (name: string) => lines.find((entry) => entry.name === name);
    expect(line("Functions and checks")?.value).toMatch(/^version \d+\.\d+\.\d+$/);
    expect(line("Edition")?.note).toBe("IRC-2021");
    expect(line("Rule")?.value).toContain("M1505.4");
    expect(line("Rule")?.note).toMatch(/^read in/);
    expect(line("Flow constant")).toMatchObject({
      value: "1.07 (1 fan)",
      note: "common practice of the trade",
    });
    expect(line("Window of pressures")?.value).toBe("1 to 8 Pa");
    expect(line("Codes of inputs, formulas, settings")?.value).toMatch(
      /^[0-9a-f]{8}( [0-9a-f]{8}){2}$/,
    );
  });
});

describe("the name of a copy", () => {
  it("is the job's, without signs that no file can have", () => {
    expect(copyFileName("Alder Terrace", "plain")).toBe("Alder Terrace-plain.xlsx");
    expect(copyFileName('Lots 1/2: "east"', "values")).toBe("Lots 1 2 east-values.xlsx");
    expect(copyFileName(" .. ", "plain")).toBe("job-plain.xlsx");
  });
});
