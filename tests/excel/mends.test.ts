import { describe, expect, it } from "vitest";
import { auditFormulas } from "../../src/audit";
import { applyMend, readWorkbook, undoMend } from "../../src/excel";
import { checkJob, type Mend } from "../../src/job";
import { Workbook } from "../../src/workbook";
import { hostOf } from "../desk-host/desk";
import { today } from "./demo";
import { demoHost, hostError, line, placeOf, typedAt } from "./hosts";

async function demoFindings() {
  const host = demoHost();
  const { file } = await readWorkbook();
  return { host, findings: checkJob(file, today, auditFormulas).findings };
}

async function mendOf(kind: string) {
  const { host, findings } = await demoFindings();
  const found = findings.find((finding) => finding.kind === kind);
  if (!found?.apply) throw new Error(`no mend for ${kind}`);
  return { host, sheet: found.sheet, mend: found.apply };
}

describe("the mends of the demo job", () => {
  it("each settle their finding, and taken back leave the sheet as it was", async () => {
    const { host, findings } = await demoFindings();
    const mended = findings.filter(({ apply }) => apply !== undefined);
    expect(new Set(mended.map(({ apply }) => apply?.label.split(" ")[0]))).toEqual(
      new Set(["Set", "Turn", "Type", "Restore"]),
    );
    for (const { sheet, cell, kind, apply } of mended) {
      const { writes } = apply as Mend;
      const before = writes.map((write) => typedAt(host, sheet, write.cell));
      const undo = await applyMend(sheet, apply as Mend);
      const { file } = await readWorkbook();
      const left = checkJob(file, today, auditFormulas).findings.filter(
        (finding) => finding.sheet === sheet && finding.cell === cell,
      );
      expect(left.map((finding) => finding.kind)).not.toContain(kind);
      await undoMend(undo);
      expect(writes.map((write) => typedAt(host, sheet, write.cell))).toEqual(before);
    }
  });
});

describe("a mend", () => {
  it("moves a copied formula to its row", async () => {
    const { host, sheet, mend } = await mendOf("formula-typed-over");
    const undo = await applyMend(sheet, mend);
    expect(typedAt(host, "Fans", "R70")).toBe("=FANROW.ROOM_RATE(Job!$B$3,D70,E70,F70,Job!$B$5)");
    expect(undo.cells.map(({ cell, formula }) => [cell, formula])).toEqual([["R70", 50]]);
  });

  it("empties a cell, and puts text and numbers as what they are", async () => {
    const { host, sheet, mend } = await mendOf("pressure-above");
    await applyMend(sheet, mend);
    expect(["I3", "K3", "V3"].map((cell) => typedAt(host, sheet, cell))).toEqual([
      "B",
      "",
      "read 16.2, 16.4, 16.1 with A",
    ]);
  });

  it("takes two round trips", async () => {
    const { host, sheet, mend } = await mendOf("pressure-above");
    await new Promise((resolve) => setTimeout(resolve, 20));
    const asked = host.requestCount;
    await applyMend(sheet, mend);
    expect(host.requestCount - asked).toBe(2);
  });

  it("keeps a text that looks like a formula, a number or a date as text", async () => {
    const host = hostOfData([line("a", "b", "c", "d")]);
    const texts = ["=1+1", "12", "1/2", "-0.3 Pa"];
    await applyMend("Data", {
      label: "Write",
      writes: texts.map((value, i) => ({ cell: `${"ABCD"[i]}1`, value })),
    });
    expect([0, 1, 2, 3].map((col) => host.value("Data", 0, col))).toEqual(texts);
  });

  it("makes a number of a cell formatted as text, and a text again when taken back", async () => {
    const workbook = Workbook.create();
    const style = workbook.addStyle({ numberFormat: "@" });
    workbook.addSheet("Data", { rows: [[{ value: "4.1", style }]] });
    const host = hostOf(workbook);
    const undo = await applyMend("Data", {
      label: "Type 4.1",
      writes: [{ cell: "A1", value: 4.1 }],
    });
    expect(host.value("Data", 0, 0)).toBe(4.1);
    await undoMend(undo);
    expect(host.value("Data", 0, 0)).toBe("4.1");
    expect(host.styleAt("Data", 0, 0).numberFormat).toBe("@");
  });

  it("taken back gives texts, error values and blanks as they were", async () => {
    const host = hostOfData([line("4.1", { error: "#N/A" }, null, true)]);
    const undo = await applyMend("Data", {
      label: "Write",
      writes: ["A1", "B1", "C1", "D1"].map((cell) => ({ cell, value: 7 })),
    });
    expect([0, 1, 2, 3].map((col) => host.value("Data", 0, col))).toEqual([7, 7, 7, 7]);
    await undoMend(undo);
    expect([0, 1, 2, 3].map((col) => host.value("Data", 0, col))).toEqual([
      "4.1",
      { error: "#N/A" },
      null,
      true,
    ]);
  });

  it("is not taken back over a later edit", async () => {
    const { host, sheet, mend } = await mendOf("pressure-negative");
    const undo = await applyMend(sheet, mend);
    const { row, col } = placeOf("L9");
    host.userEnters("Fans", row, col, "6.6");
    const { code, message } = await hostError(() => undoMend(undo));
    expect(code).toBe("CellChanged");
    expect(message).toBe("L9 on Fans was changed since: nothing was taken back.");
    expect(["K9", "L9"].map((cell) => typedAt(host, sheet, cell))).toEqual(["4.1", "6.6"]);
  });

  it("is refused on a protected sheet before anything is written", async () => {
    const { host, sheet, mend } = await mendOf("pressure-above");
    await protect("Fans");
    const before = mend.writes.map((write) => typedAt(host, sheet, write.cell));
    const { code, message } = await hostError(() => applyMend(sheet, mend));
    expect(code).toBe("SheetProtected");
    expect(message).toBe(
      "The sheet Fans is protected: unprotect it on the Review tab, then try again.",
    );
    expect(mend.writes.map((write) => typedAt(host, sheet, write.cell))).toEqual(before);
  });

  it("is made in unlocked cells of a protected sheet", async () => {
    const workbook = Workbook.create();
    const style = workbook.addStyle({ unlocked: true });
    workbook.addSheet("Data", { rows: [[{ value: -4, style }, { value: 1 }]] });
    const host = hostOf(workbook);
    await protect("Data");
    await applyMend("Data", { label: "Turn the sign", writes: [{ cell: "A1", value: 4 }] });
    expect(host.value("Data", 0, 0)).toBe(4);
    const both = { label: "Write", writes: ["A1", "B1"].map((cell) => ({ cell, value: 9 })) };
    expect((await hostError(() => applyMend("Data", both))).code).toBe("SheetProtected");
    expect(host.value("Data", 0, 0)).toBe(4);
  });

  it("says where the sheet was deleted meanwhile", async () => {
    demoHost();
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Dwellings").delete();
      await context.sync();
    });
    const mend = { label: "Write", writes: [{ cell: "A2", value: 1 }] };
    const { message } = await hostError(() => applyMend("Dwellings", mend));
    expect(message).toContain("There is no sheet Dwellings any more");
  });
});

function hostOfData(rows: ReturnType<typeof line>[]) {
  const workbook = Workbook.create();
  workbook.addSheet("Data", { rows });
  return hostOf(workbook);
}

async function protect(sheet: string): Promise<void> {
  await Excel.run(async (context) => {
    context.workbook.worksheets.getItem(sheet).protection.protect();
    await context.sync();
  });
}
