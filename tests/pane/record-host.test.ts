import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { workbookOfCsv } from "../../src/csv";
import type { WorkbookHost } from "../../src/desk/host";
import { findEdition } from "../../src/editions";
import { codeKinds, provenanceOf } from "../../src/job";
import { excelHost } from "../../src/pane/session/excel-host";
import {
  compareAgain,
  compareWithFile,
  makeCopy,
  makeEstimate,
  writeRecords,
} from "../../src/pane/session/record-work";
import { Session } from "../../src/pane/session/session";
import { Workbook } from "../../src/workbook";
import { hostOf, settled } from "../desk-host/desk";
import { demo } from "../excel/demo";
import { demoHost } from "../excel/hosts";
import { FakeHost, HandClock } from "./fake-host";
import { boxSheet, dwellingSheet, fanSheet, fileOf, goodFan, jobSheet } from "./job-file";

// The pane's own session over the real client library and the host.
let host: WorkbookHost;
let clock: HandClock;
let session: Session;

const at = (place: string) => {
  const found = session.state.check?.findings.find(
    ({ sheet, cell }) => `${sheet}!${cell}` === place,
  );
  if (!found) throw new Error(`nothing was found at ${place}`);
  return found;
};

/** Lets events arrive, the pause after an edit pass, and the work that follows end. */
async function settle(): Promise<void> {
  await settled();
  clock.turn();
  await session.select("Fans", "A1");
}

/** Settles until something is so: events of many cells come one after another. */
async function until(isSo: () => boolean): Promise<void> {
  for (let times = 0; times < 20 && !isSo(); times++) await settle();
  expect(isSo()).toBe(true);
}

const fileNamed = (name: string, content: Uint8Array | string) =>
  new File([content as BlobPart], name);

beforeEach(async () => {
  host = demoHost();
  clock = new HandClock();
  session = new Session(excelHost, clock);
  await session.open();
  await session.check();
});

// A session left open would answer the edits of the tests after it.
afterEach(() => session.close());

describe("findings accepted in the open workbook", () => {
  it("are kept on a sheet, counted apart, and open again once a cell of the row changes", async () => {
    const before = session.state.check?.summary.bySeverity.result ?? 0;
    await session.accept(at("Fans!K3"), "read twice, grille off", "AB");
    expect(session.state.problem).toBe("");
    expect(at("Fans!K3").accepted).toMatchObject({ reason: "read twice, grille off" });
    expect(session.state.check?.summary).toMatchObject({
      accepted: 1,
      bySeverity: { result: before - 1 },
    });
    expect(session.state.initials).toBe("AB");
    expect(host.sheets.map(({ name }) => name)).toContain("Accepted");
    await settle();
    expect(at("Fans!K3").accepted).toBeDefined();
    host.userEnters("Fans", 2, 21, "seen again");
    await until(() => at("Fans!K3").accepted === undefined);
    expect(at("Fans!K3").lapsed).toMatchObject({ initials: "AB" });
    expect(session.state.message).toMatch(/^1 open again\./);
  });

  it("are open again when they are taken back", async () => {
    await session.accept(at("Fans!K3"), "read twice", "AB");
    await session.withdraw(at("Fans!K3"));
    expect(at("Fans!K3")).not.toHaveProperty("accepted");
    expect(at("Fans!K3")).not.toHaveProperty("lapsed");
    expect(session.state.check?.summary.accepted).toBe(0);
  });

  it("are not among the marks on the sheet", async () => {
    await session.setMarks(true);
    await session.accept(at("Fans!K3"), "read twice", "AB");
    expect(host.marksAt("Fans", 2, 10)).toBeNull();
    expect(host.marksAt("Fans", 5, 10)).not.toBeNull();
  });
});

describe("the audit of formulas", () => {
  it("is part of the check that the pane makes", async () => {
    const { findings } = session.state.check ?? { findings: [] };
    expect(findings.some(({ cell }) => cell === "P5")).toBe(false);
    host.userEnters("Fans", 4, 15, `${host.typedText("Fans", 4, 15)}*1`);
    await until(() => session.state.check?.findings !== findings);
    expect(at("Fans!P5").kind).toBe("formula-other-constant");
  });
});

describe("records in the open workbook", () => {
  const one = { job: true, dwellings: { name: "Lot 01" }, proofs: true, papers: false } as const;

  it("go to sheets of their own, which are written anew the next time", async () => {
    await writeRecords(session, one);
    expect(session.state.problem).toBe("");
    expect(session.state.record.written).toEqual(["Record", "Record Lot 01"]);
    const names = host.sheets.map(({ name }) => name);
    await writeRecords(session, one);
    expect(host.sheets.map(({ name }) => name)).toEqual(names);
    expect(host.value("Record Lot 01", 0, 0)).toBe("Dwelling record: Lot 01");
  }, 20_000);

  it("add no finding, neither as they are written nor when everything is read again", async () => {
    const found = session.state.check?.findings.length;
    const before = session.state.check;
    await writeRecords(session, one);
    await settle();
    expect(session.state.check).toBe(before);
    await session.check();
    expect(session.state.check?.findings.length).toBe(found);
  }, 20_000);

  it("say which were written where the next one was refused", async () => {
    const fake = new FakeHost(fileOf(jobSheet, dwellingSheet, boxSheet, fanSheet(goodFan)));
    const own = new Session(fake, clock);
    await own.check();
    fake.refuses = "write Record Lot 1";
    await writeRecords(own, { job: true, dwellings: "all", proofs: false, papers: false });
    expect(own.state.problem).toBe("write Record Lot 1 is not allowed");
    expect(own.state.record.written).toEqual(["Record"]);
  });
});

describe("comparing with an older file", () => {
  it("tells nothing of the file itself, and one edit after an edit", async () => {
    const older = fileNamed("october.xlsx", demo().save());
    await compareWithFile(session, older);
    expect(session.state.problem).toBe("");
    expect(session.state.record.comparison?.changes).toEqual([]);
    expect(session.state.message).toBe("Nothing differs from october.xlsx.");
    const { check } = session.state;
    host.userEnters("Fans", 1, 21, "seen again");
    await until(() => session.state.check !== check);
    await compareAgain(session);
    expect(session.state.record.comparison?.changes).toMatchObject([
      { kind: "typed", sheet: "Fans", cell: "V2", after: "seen again" },
    ]);
    const { codes, check: now } = session.state.record.comparison ?? {};
    const changed = now && provenanceOf(now.job).codes;
    expect(codeKinds.filter((kind) => codes?.[kind] !== changed?.[kind])).toEqual(["inputs"]);
  });

  it("says of a file that cannot be read which and why, in one line", async () => {
    await compareWithFile(session, fileNamed("prose.xlsx", "not a workbook"));
    expect(session.state.problem).toMatch(/^prose\.xlsx: [^\n]+$/);
    expect(session.state.record.comparison).toBeUndefined();
    expect(session.state.busy).toBe("");
  });
});

describe("copies that need no add-in", () => {
  const fake = () => new FakeHost(fileOf(jobSheet, dwellingSheet, boxSheet, fanSheet(goodFan)));
  const formulasOf = (bytes: Uint8Array) =>
    Workbook.open(bytes).sheets.flatMap((sheet) =>
      [...sheet.cells()].flatMap(({ formula }) => (formula === null ? [] : [formula])),
    );

  it("hold native formulas, or none at all", async () => {
    const given = fake();
    given.bytes = demo().save();
    const own = new Session(given, clock);
    expect(own.givesFile).toBe(true);
    await makeCopy(own, "plain");
    expect(own.state.problem).toBe("");
    const plain = own.state.record.copy;
    const formulas = formulasOf(plain?.bytes ?? new Uint8Array());
    expect(formulas.length).toBeGreaterThan(500);
    expect(formulas.filter((formula) => /FANROW/i.test(formula))).toEqual([]);
    await makeCopy(own, "values");
    expect(formulasOf(own.state.record.copy?.bytes ?? new Uint8Array())).toEqual([]);
    expect(own.state.record.copy?.fileName).toBe("job-values.xlsx");
  }, 30_000);

  it("are not offered by a program that does not hand its workbook over, such as the desk", () => {
    expect(new Session(fake(), clock).givesFile).toBe(false);
    expect(session.givesFile).toBe(false);
  });
});

describe("a list of lots in the open workbook", () => {
  it("becomes an estimate of its own, ready to be taken away", async () => {
    const text = "Lot,Plan,Floor area (sq ft),Beds,Bathrooms\nLot 1,A,1800,3,2\nLot 2,A,1800,3,2\n";
    hostOf(workbookOfCsv(new TextEncoder().encode(text), "lots.csv"));
    const own = new Session(excelHost, clock);
    await own.open();
    await own.check();
    await makeEstimate(own, findEdition("IRC-2021"));
    own.close();
    expect(own.state.problem).toBe("");
    const { copy } = own.state.record;
    expect(copy?.fileName).toBe("lots-estimate.xlsx");
    expect(copy?.left.join()).toContain("usual sizes stand in");
    const made = Workbook.open(copy?.bytes ?? new Uint8Array()).sheet("Schedule");
    expect([1, 2, 3, 4, 5].map((row) => made?.cell(row, 0)?.value ?? null)).toEqual([
      ...["Lot 1", "Lot 1", "Lot 2", "Lot 2", null],
    ]);
  });
});
