import { describe, expect, it } from "vitest";
import { toJobFile } from "../../src/command";
import { connect } from "../../src/desk/host";
import { readWorkbook } from "../../src/excel";
import { acceptFinding, withdrawAcceptance, writeFindingsSheet } from "../../src/excel/sheets";
import { checkJob, type Finding, fingerprintOf, isOpen, provenanceOf } from "../../src/job";
import { type Sheet, Workbook } from "../../src/workbook";
import { hostOf } from "../desk-host/desk";
import { installOffice } from "../desk-host/install-office";
import { demo, today } from "./demo";
import { answerWithError, cellsOf, hostError, line } from "./hosts";

/** The demo job in a host, with a sheet Accepted of these rows where some are given. */
async function opened(rows?: readonly ReturnType<typeof line>[]) {
  const workbook = demo();
  if (rows) workbook.addSheet("Accepted", { rows });
  const host = hostOf(workbook);
  const { file } = await readWorkbook();
  const { findings } = checkJob(file, today);
  const at = (cell: string) => findings.find((one) => one.cell === cell) as Finding;
  const accept = (finding: Finding, reason = "seen on site", initials = "QT") =>
    acceptFinding({
      finding,
      fingerprint: fingerprintOf(file, finding),
      reason,
      initials,
      date: today,
    });
  return { host, at, accept };
}

async function recheck() {
  const { file } = await readWorkbook();
  return checkJob(file, today);
}

describe("accepting a finding", () => {
  it("writes a row that the next check reads, and takes it back", async () => {
    const { host, at, accept } = await opened();
    const finding = at("K3");
    expect(await accept(finding)).toBe("Accepted");
    expect(cellsOf(host, "Accepted", "A1:G2")).toEqual([
      ["Sheet", "Cell", "Kind", "About", "Reason", "Initials", "Date"],
      ["Fans", "K3", "pressure-above", "Lot 01, B2", "seen on site", "QT", today],
    ]);
    const after = await recheck();
    expect(after.summary.accepted).toBe(1);
    expect(after.findings.find((one) => !isOpen(one))).toMatchObject({
      cell: "K3",
      accepted: { reason: "seen on site", initials: "QT", date: today },
    });
    expect(await withdrawAcceptance(finding)).toBe("Accepted");
    expect((await recheck()).summary.accepted).toBe(0);
    expect((await recheck()).findings.filter(({ sheet }) => sheet === "Accepted")).toEqual([]);
  });

  it("lapses when the row is edited", async () => {
    const { host, at, accept } = await opened();
    await accept(at("K3"));
    host.userEnters("Fans", 2, 20, "Someone else");
    const { findings } = await recheck();
    expect(findings.find(({ cell }) => cell === "K3")).toMatchObject({
      lapsed: { initials: "QT" },
    });
  });

  it("holds in the saved file too, and the inputs have the same fingerprint there", async () => {
    const { host, at, accept } = await opened();
    await accept(at("P57"));
    const here = await recheck();
    const saved = checkJob(toJobFile(Workbook.open(host.save())), today);
    expect(saved.findings.filter((one) => !isOpen(one))).toMatchObject([{ cell: "P57" }]);
    expect(provenanceOf(saved.job).codes).toEqual(provenanceOf(here.job).codes);
  });

  it("shows apart on the sheet of findings, with what the results rest on", async () => {
    const { host, at, accept } = await opened();
    await accept(at("K3"));
    const { findings, summary, job } = await recheck();
    const provenance = provenanceOf(job);
    await writeFindingsSheet(findings, summary, provenance);
    const last = findings.length + 1;
    expect(cellsOf(host, "Findings", `B${last}:C${last}`)).toEqual([["K3", "accepted"]]);
    expect(host.value("Findings", last - 1, 7)).toBe("Accepted by QT: seen on site");
    const beside = cellsOf(host, "Findings", "J1:K80");
    expect(beside).toContainEqual(["accepted", 1]);
    expect(beside).toContainEqual(["Code of the inputs", provenance.codes.inputs]);
    expect(beside).toContainEqual(["Version of the functions", provenance.version]);
    // The sheet itself is none of the job's.
    expect((await recheck()).findings).toEqual(findings);
  });

  it("replaces an acceptance of the same finding and keeps the others", async () => {
    const { host, at, accept } = await opened();
    await accept(at("K3"));
    await accept(at("K6"));
    await accept(at("K3"), "box was turned", "RB");
    expect(cellsOf(host, "Accepted", "B2:F4")).toEqual([
      ["K3", "pressure-above", "Lot 01, B2", "box was turned", "RB"],
      ["K6", "pressure-below", at("K6").about, "seen on site", "QT"],
      [null, null, null, null, null],
    ]);
  });

  it("writes into the columns of a sheet that someone arranged, and adds those missing", async () => {
    const { host, at, accept } = await opened([
      line("Taken as it is"),
      line("KIND", "Cell", "sheet", "Seen by", "Reason", "Initials"),
      line("flow-short", "P57", "Fans", "office", "old duct", "QT"),
    ]);
    await accept(at("K3"));
    expect(cellsOf(host, "Accepted", "A2:H4")).toEqual([
      ["KIND", "Cell", "sheet", "Seen by", "Reason", "Initials", "About", "Date"],
      ["flow-short", "P57", "Fans", "office", "old duct", "QT", null, null],
      ["pressure-above", "K3", "Fans", null, "seen on site", "QT", "Lot 01, B2", today],
    ]);
    expect((await recheck()).summary.accepted).toBe(1);
  });

  it("refuses one without reason or initials, and a sheet of another kind", async () => {
    const { at, accept } = await opened([line("Accepted quotes"), line("Lot 3", 120)]);
    const finding = at("K3");
    expect((await hostError(async () => accept(finding, " "))).message).toContain("needs a reason");
    expect((await hostError(async () => accept(finding, "why", ""))).code).toBe("InvalidArgument");
    expect((await hostError(() => accept(finding))).message).toContain("of another kind");
  });

  it("says so when there is nothing to take back", async () => {
    const { at } = await opened();
    const { code, message } = await hostError(() => withdrawAcceptance(at("K3")));
    expect(code).toBe("ItemNotFound");
    expect(message).toContain("Fans!K3");
  });
});

describe("a sheet as it looks", () => {
  it("tells hidden lines and cells formatted as text, in one more round trip", async () => {
    const workbook = Workbook.create();
    const text = workbook.addStyle({ numberFormat: "@" });
    const rows = Array.from({ length: 12 }, (_, i) => [
      { value: i },
      { value: String(i), style: text },
      { value: 2 * i },
    ]);
    workbook.addSheet("Plain", { rows });
    workbook.addSheet("O'Brien, all", { rows });
    const sheet = workbook.sheet("O'Brien, all") as Sheet;
    for (const row of [3, 4, 8]) (sheet.hiddenRows as Set<number>).add(row);
    (sheet.hiddenCols as Set<number>).add(0);
    const host = hostOf(workbook);
    const { file, trips } = await readWorkbook();
    expect(trips).toBe(host.requestCount);
    expect(trips).toBeLessThanOrEqual(3);
    const [plain, odd] = file.sheets;
    const lines = (test: ((line: number) => boolean) | undefined, count: number) =>
      Array.from({ length: count }, (_, i) => i).filter((i) => test?.(i));
    expect(lines(odd?.hiddenRow, 12)).toEqual([3, 4, 8]);
    expect(lines(odd?.hiddenCol, 3)).toEqual([0]);
    expect([lines(plain?.hiddenRow, 12), lines(plain?.hiddenCol, 3)]).toEqual([[], []]);
    expect(odd?.numberFormat?.(5, 1)).toBe("@");
    expect(odd?.numberFormat?.(5, 2)).toBe("General");
  });

  it("is read without its hidden lines where Excel will not list them", async () => {
    const workbook = demo();
    (workbook.sheet("Fans")?.hiddenRows as Set<number> | undefined)?.add(5);
    const host = hostOf(workbook);
    const bridge = connect(installOffice().OfficeExtension, host);
    const { sendMessageToHost } = bridge;
    bridge.sendMessageToHost = (text) => {
      if (!text.includes("GetSpecialCellsOrNullObject")) sendMessageToHost(text);
      else answerWithError(bridge, text, "GeneralException", "Too many areas.");
    };
    const { file } = await readWorkbook();
    expect(file.sheets.some((sheet) => sheet.hiddenRow?.(5))).toBe(false);
    expect(checkJob(file, today).findings).toHaveLength(37);
  });
});
