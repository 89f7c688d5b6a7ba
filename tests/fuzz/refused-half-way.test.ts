import { describe, expect, it } from "vitest";
import { toJobFile } from "../../src/command";
import type { WorkbookHost } from "../../src/desk/host";
import { applyMend, undoMend } from "../../src/excel";
import {
  acceptFinding,
  addJobSheets,
  saveFit,
  withdrawAcceptance,
  writeFindingsSheet,
  writeOpenings,
  writePlan,
} from "../../src/excel/sheets";
import { boxProofs, checkJob, type Mend, planOpenings, provenanceOf } from "../../src/job";
import { jobRecord, proofRecord } from "../../src/records";
import { Workbook } from "../../src/workbook";
import { hostOf } from "../desk-host/desk";
import { hostError, refuseFrom } from "../excel/hosts";
import { smallJob, today } from "../records/small-job";
import { whole } from "../setup/whole";

const pairs = [1.2, 2, 3, 4.5, 6, 7.5].map((pressure): [string, number, number, number] => [
  "A",
  24,
  pressure,
  26 * Math.sqrt(pressure),
]);
const made = smallJob({ pairs }).save();
const check = checkJob(toJobFile(Workbook.open(made)), today);
const { findings, summary, job } = check;
const [first] = findings;
if (!first) throw new Error("no finding");
const acceptance = {
  finding: first,
  fingerprint: "1",
  reason: "seen",
  initials: "QT",
  date: today,
};
const proofOf = (own = job) => {
  const found = boxProofs(own).get("BOX 1");
  if (!found) throw new Error("no proof");
  return proofRecord(own, found);
};
const proof = proofOf();
const laterProof = proofOf(
  checkJob(toJobFile(smallJob({ pairs: [...pairs, ["A", 24, 7, 70]] })), today).job,
);
const mend: Mend = {
  label: "Turn the sign",
  writes: [
    { cell: "I2", value: 4.25 },
    { cell: "J2", value: "=seen" },
    { cell: "H2", formulaOf: "H3" },
  ],
};
const fit = [{ sheet: "Fans", heading: "Room", field: "note" }];
const writeFindings = () => writeFindingsSheet(findings, summary, provenanceOf(job));
const { openings } = planOpenings(20, 150, 1.07);

/** Each thing that is written, after what has to be there first. */
const works: readonly [
  name: string,
  before: () => Promise<unknown>,
  work: () => Promise<unknown>,
][] = [
  ["a sheet of findings", async () => {}, writeFindings],
  ["a sheet of findings renewed", writeFindings, () => writeFindingsSheet([first], summary)],
  ["a first choice", async () => {}, () => saveFit(fit)],
  [
    "a second choice",
    () => saveFit(fit),
    () => saveFit([{ sheet: "Fans", heading: "Fan", field: "" }, ...fit]),
  ],
  ["a first acceptance", async () => {}, () => acceptFinding(acceptance)],
  [
    "an acceptance renewed",
    () => acceptFinding(acceptance),
    () => acceptFinding({ ...acceptance, reason: "seen again" }),
  ],
  ["an acceptance withdrawn", () => acceptFinding(acceptance), () => withdrawAcceptance(first)],
  ["a record", async () => {}, () => writePlan(jobRecord(check))],
  ["a record with a chart renewed", () => writePlan(proof), () => writePlan(laterProof)],
  ["a mend", async () => {}, () => applyMend("Fans", mend)],
  ["openings planned", async () => {}, () => writeOpenings({ box: "Box 9", openings })],
  [
    "the sheets of a job",
    async () => {},
    () => addJobSheets({ system: "ip", features: ["estimate"] }),
  ],
];

/** The calls that are refused, one at a time: all of them by `npm run fuzz`, else some twelve. */
function callsOf(count: number): number[] {
  const step = whole ? 1 : Math.max(1, Math.floor(count / 12));
  return Array.from({ length: Math.ceil(count / step) }, (_, i) => count - i * step);
}

/** All of a workbook that a reader sees. */
function seen(host: WorkbookHost) {
  const workbook = Workbook.open(host.bytes());
  return workbook.sheets.map((sheet) => ({
    name: sheet.name,
    cells: [...sheet.cells()].flatMap(({ row, col, value, formula, style }) =>
      value === null && formula === null
        ? []
        : [[row, col, value, formula, workbook.styleSpec(style)]],
    ),
    merges: [...sheet.merges].sort(),
    charts: sheet.charts.length,
  }));
}

/** A host in which something stands already. */
async function prepared(before: () => Promise<unknown>): Promise<WorkbookHost> {
  const host = hostOf(Workbook.open(made));
  await before();
  return host;
}

describe("Writing that Excel refuses half way", () => {
  it.each(works)("leaves the workbook as it was and says so: %s", async (_, before, work) => {
    const host = await prepared(before);
    const calls = refuseFrom(host, Number.POSITIVE_INFINITY);
    const former = seen(host);
    await work();
    const wanted = seen(host);
    expect(wanted).not.toEqual(former);
    for (const n of callsOf(calls.count)) {
      const again = await prepared(before);
      refuseFrom(again, n, 1);
      const left = () => seen(again);
      let told = "";
      await work().catch((error) => {
        told = error.message;
      });
      // The page of a record is set up when all else stands; that alone is told and left.
      if (told === "") expect([n, left()]).toEqual([n, wanted]);
      else {
        expect([n, left()]).toEqual([n, former]);
        expect(told).toContain("Odd trouble");
      }
    }
  });

  it.each(works)(
    "and goes on refusing says what could not be put back: %s",
    async (_, before, work) => {
      const host = await prepared(before);
      const calls = refuseFrom(host, Number.POSITIVE_INFINITY);
      const former = seen(host);
      await work();
      for (const n of callsOf(calls.count)) {
        const again = await prepared(before);
        const { stop } = refuseFrom(again, n);
        let told = "";
        await work().catch((error) => {
          told = error.message;
        });
        stop();
        const isAsBefore = JSON.stringify(seen(again)) === JSON.stringify(former);
        if (/Nothing was changed/.test(told)) expect(isAsBefore).toBe(true);
        if (told !== "" && !isAsBefore) expect(told).toMatch(/Not all could be taken back: .+/);
      }
    },
  );
});

describe("A mend", () => {
  it("is refused where a cell does not hold any more what was checked", async () => {
    const host = hostOf(Workbook.open(made));
    const [grid] = toJobFile(Workbook.open(made)).sheets.filter(({ name }) => name === "Fans");
    const write: Mend = { label: "Type 5", writes: [{ cell: "I2", value: 5 }] };
    const undo = await applyMend("Fans", write, grid);
    await undoMend(undo);
    host.userEnters("Fans", 1, 8, "6.1");
    const { code, message } = await hostError(() => applyMend("Fans", write, grid));
    expect(code).toBe("CellChanged");
    expect(message).toBe(
      "I2 on Fans was changed since the check: nothing was written. Check again.",
    );
    expect(host.value("Fans", 1, 8)).toBe(6.1);
  });

  it("is refused where the formula that it copies was changed", async () => {
    const workbook = Workbook.create();
    workbook.addSheet("Data", {
      rows: [[{ formula: "1+1", value: 2 }], [{ value: 2 }]],
    });
    const [grid] = toJobFile(workbook).sheets;
    const host = hostOf(Workbook.open(workbook.save()));
    host.userEnters("Data", 0, 0, "=3+3");
    const copy: Mend = { label: "Restore", writes: [{ cell: "A2", formulaOf: "A1" }] };
    expect((await hostError(() => applyMend("Data", copy, grid))).message).toContain("A1 on Data");
    expect(host.value("Data", 1, 0)).toBe(2);
  });
});
