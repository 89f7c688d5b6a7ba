import { describe, expect, it } from "vitest";
import {
  acceptanceHeadings,
  checkJob,
  type Finding,
  fingerprintOf,
  isOpen,
  type JobFile,
} from "../../src/job";
import {
  boxes,
  dwellings,
  fanHeadings,
  grid,
  settings,
  soundFan,
  type TestCell,
  today,
} from "./grids";

type Row = readonly TestCell[];

function fans(change: Partial<Record<string, TestCell>>) {
  const cells: Record<string, TestCell> = { ...soundFan, ...change };
  return grid("Fans", [fanHeadings, fanHeadings.map((heading) => cells[heading] ?? null)]);
}

/** A fan short of its rate, and what the Accepted sheet says. */
function job(change: Partial<Record<string, TestCell>>, accepted: readonly Row[] = []): JobFile {
  const sheets = [settings, boxes, dwellings, fans(change)];
  return { sheets: accepted.length > 0 ? [...sheets, grid("Accepted", accepted)] : sheets };
}

const short = { "Box pressure (Pa)": 3.5, "Flow (cfm)": 48 };
const plain = job(short);
const finding = checkJob(plain, today).findings[0] as Finding;
const fingerprint = fingerprintOf(plain, finding);
const row = (change: Partial<Record<(typeof acceptanceHeadings)[number], TestCell>> = {}) => {
  const cells: Record<string, TestCell> = {
    Sheet: "Fans",
    Cell: finding.cell,
    Kind: finding.kind,
    About: finding.about,
    Reason: "duct is to be replaced",
    Initials: "QT",
    Date: 46350,
    Fingerprint: fingerprint,
    ...change,
  };
  return acceptanceHeadings.map((heading) => cells[heading] ?? null);
};
const check = (rows: readonly Row[], change: Partial<Record<string, TestCell>> = short) =>
  checkJob(job(change, [acceptanceHeadings, ...rows]), today);

describe("an accepted finding", () => {
  it("stays in view with who accepted it and why, and is counted apart", () => {
    expect(finding.kind).toBe("flow-short");
    const { findings, summary, settled } = check([row()]);
    expect(findings).toHaveLength(1);
    expect(findings[0]).toMatchObject({
      kind: "flow-short",
      accepted: { reason: "duct is to be replaced", initials: "QT", date: 46350 },
    });
    expect(findings.filter(isOpen)).toEqual([]);
    expect(summary).toMatchObject({
      accepted: 1,
      bySeverity: { wrong: 0, doubtful: 0, missing: 0 },
      byKind: [],
    });
    expect(settled).toEqual([]);
  });

  it("is open again, with a note, when a cell of its row changes", () => {
    for (const change of [
      { ...short, Tester: "someone else" },
      { ...short, "Flow (cfm)": { formula: "FANROW.FLOW(H2,I2)", value: 48 } },
    ]) {
      const { findings, summary } = check([row()], change);
      const again = findings.find(({ kind }) => kind === "flow-short");
      expect(again?.accepted).toBeUndefined();
      expect(again?.lapsed).toMatchObject({ initials: "QT" });
      expect(summary.accepted).toBe(0);
    }
  });

  it("that is gone leaves its acceptance settled, and says nothing", () => {
    const { findings, settled } = check([row()], {});
    expect(findings).toEqual([]);
    expect(settled).toMatchObject([{ cell: finding.cell, kind: "flow-short", initials: "QT" }]);
  });
});

describe("an acceptance", () => {
  it.each(["Reason", "Initials", "Fingerprint"] as const)(
    "without %s counts for nothing",
    (gap) => {
      const { findings, summary } = check([row({ [gap]: "  " })]);
      expect(findings.map(({ kind, sheet, cell }) => `${kind} ${sheet}!${cell}`)).toEqual([
        "flow-short Fans!J2",
        "acceptance-incomplete Accepted!A2",
      ]);
      expect(findings[1]?.what).toContain(gap.toLowerCase());
      expect(summary.accepted).toBe(0);
    },
  );

  it("is read whatever the case and the order of the columns, with others between", () => {
    const at = (heading: string) => acceptanceHeadings.indexOf(heading as "Sheet");
    const order = ["Initials", "Cell", "Sheet", "Reason", "Kind", "Fingerprint"];
    const own = row({ Sheet: "FANS", Cell: "$j$2", Kind: "Flow short of the required rate" });
    const rows: Row[] = [
      ["What we took as it is"],
      [...order.map((heading) => heading.toUpperCase()), "Seen by"],
      [...order.map((heading) => own[at(heading)] ?? null), "office"],
    ];
    const { findings } = checkJob(job(short, rows), today);
    expect(findings[0]?.accepted).toEqual({
      reason: "duct is to be replaced",
      initials: "QT",
      date: null,
    });
  });

  it("of one kind does not cover another finding of the cell", () => {
    expect(check([row({ Kind: "value-differs" })]).findings[0]?.accepted).toBeUndefined();
  });
});

describe("the fingerprint of a row", () => {
  const of = (change: Partial<Record<string, TestCell>>) => fingerprintOf(job(change), finding);

  it("is twelve hex digits", () => {
    expect(fingerprint).toMatch(/^[0-9a-f]{12}$/);
  });

  it("is the same for a formula in the spelling of a file and as it is typed", () => {
    const flow = (formula: string) => of({ ...short, "Flow (cfm)": { formula, value: 48 } });
    expect(flow("[2]!_xldudf_FANROW_FLOW(H2,I2)")).toBe(flow("FANROW.FLOW(H2,I2)"));
    expect(flow("FANROW.FLOW(H2,I3)")).not.toBe(flow("FANROW.FLOW(H2,I2)"));
  });

  it("does not hang on the last digits that programs compute otherwise", () => {
    expect(of({ ...short, "Flow (cfm)": 48.000000000001 })).toBe(fingerprint);
    expect(of({ ...short, "Flow (cfm)": 48.0001 })).not.toBe(fingerprint);
  });

  it("tells a number from the same digits as text", () => {
    expect(of({ ...short, Fan: 1 })).not.toBe(of({ ...short, Fan: "1" }));
  });
});
