import { describe, expect, it } from "vitest";
import { connect } from "../../src/desk/host";
import { clearMarks, hasMarks, markFindings, readWorkbook } from "../../src/excel";
import { checkJob, type Finding, type Severity } from "../../src/job";
import { Workbook } from "../../src/workbook";
import { hostOf } from "../desk-host/desk";
import { installOffice } from "../desk-host/install-office";
import { today } from "./demo";
import { answerWithError, demoHost, hostError, line, placeOf } from "./hosts";

async function demoFindings() {
  const host = demoHost();
  const { file } = await readWorkbook();
  const marks = (cell: string) => {
    const { row, col } = placeOf(cell);
    return host.marksAt("Fans", row, col);
  };
  return { host, marks, findings: checkJob(file, today).findings };
}

/** Formulas of all rules on a sheet. */
async function rulesOn(sheet: string): Promise<string[]> {
  return Excel.run(async (context) => {
    const formats = context.workbook.worksheets.getItem(sheet).getRange().conditionalFormats;
    formats.load("items/type");
    await context.sync();
    const rules = formats.items.map(({ custom }) => custom.rule);
    for (const rule of rules) rule.load("formula");
    await context.sync();
    return rules.map(({ formula }) => formula);
  });
}

async function idsOn(sheet: string): Promise<string[]> {
  return Excel.run(async (context) => {
    const formats = context.workbook.worksheets.getItem(sheet).getRange().conditionalFormats;
    formats.load("items/id");
    await context.sync();
    return formats.items.map(({ id }) => id);
  });
}

describe("marks on the cells of findings", () => {
  it("show on every cell that was found and on no other", async () => {
    const { host, findings } = await demoFindings();
    const count = await markFindings(findings);
    const cells = new Set(findings.map(({ sheet, cell }) => `${sheet}!${cell}`));
    expect(count).toBe(cells.size);
    for (const { name, rowCount, colCount } of host.sheets)
      for (let row = 0; row < rowCount; row++)
        for (let col = 0; col < colCount; col++) {
          const cell = `${name}!${letters(col)}${row + 1}`;
          expect([cell, host.marksAt(name, row, col) !== null]).toEqual([cell, cells.has(cell)]);
        }
  });

  it("are one conditional format for each severity of a sheet", async () => {
    const { findings } = await demoFindings();
    await markFindings(findings);
    const onFans = new Set(findings.filter((f) => f.sheet === "Fans").map((f) => f.severity));
    expect((await rulesOn("Fans")).length).toBe(onFans.size);
  });

  it("stay as they are where they are put on again: nothing goes on the user's undo", async () => {
    const { findings } = await demoFindings();
    await markFindings(findings);
    const before = await idsOn("Fans");
    await markFindings(findings);
    expect(await idsOn("Fans")).toEqual(before);
    await markFindings(findings.filter(({ severity }) => severity !== "wrong"));
    const after = await idsOn("Fans");
    expect(after.length).toBeLessThan(before.length);
    expect(before).toEqual(expect.arrayContaining(after));
  });

  it("tell the severities apart by more than colour", async () => {
    const { marks, findings } = await demoFindings();
    await markFindings(findings);
    const [wrong, doubtful, result] = ["K9", "K22", "K3"].map(marks);
    const missing = marks(findings.find(({ kind }) => kind === "duty-missing")?.cell ?? "");
    const looks = [wrong, doubtful, missing, result].map((mark) => [mark?.bold, mark?.italic]);
    expect(new Set(looks.map((look) => look.map((each) => each ?? false).join())).size).toBe(4);
    expect(new Set([wrong, doubtful, missing, result].map((mark) => mark?.fill)).size).toBe(4);
  });

  it("show the worst where a cell has several findings", async () => {
    const { marks } = await demoFindings();
    const at = (severity: Severity): Finding => finding("Fans", "A9", severity);
    await markFindings([at("missing"), at("wrong"), at("doubtful")]);
    expect(marks("A9")?.bold).toBe(true);
  });

  it("leave a cell's own format and a user's conditional format as they are", async () => {
    const { host, marks, findings } = await demoFindings();
    await Excel.run(async (context) => {
      const range = context.workbook.worksheets.getItem("Fans").getRange("K2:K9");
      const { custom } = range.conditionalFormats.add("Custom");
      custom.rule.formula = "=K2>10";
      custom.format.font.color = "#123456";
      await context.sync();
    });
    const own = host.styleAt("Fans", 2, 15);
    await markFindings(findings);
    expect(host.styleAt("Fans", 2, 15)).toEqual(own);
    expect(await rulesOn("Fans")).toContain("=K2>10");
    await clearMarks();
    expect(await rulesOn("Fans")).toEqual(["=K2>10"]);
    expect(marks("K3")?.color).toBe("#123456");
  });

  it("are put on and found beside a rule and a sheet of which Excel hands over no conditional format", async () => {
    const { host, findings } = await demoFindings();
    await Excel.run(async (context) => {
      const range = context.workbook.worksheets.getItem("Fans").getRange("K2:K9");
      for (const limit of [10, 11, 12])
        range.conditionalFormats.add("Custom").custom.rule.formula = `=K2>${limit}`;
      await context.sync();
    });
    const [bad = ""] = await idsOn("Fans");
    const boxes = host.sheets.findIndex(({ name }) => name === "Boxes");
    const id = `{${String(boxes + 1).padStart(8, "0")}`;
    const bridge = connect(installOffice().OfficeExtension, host);
    const { sendMessageToHost } = bridge;
    bridge.sendMessageToHost = (text) => {
      const asksSheet = text.includes('"ConditionalFormats"') && text.includes(id);
      const isRefused = asksSheet || (text.includes('"Formula"') && text.includes(bad));
      if (isRefused && text.includes('"ActionType":2'))
        answerWithError(bridge, text, "GeneralException", "There was an internal error.");
      else sendMessageToHost(text);
    };
    const onFans = findings.filter(({ sheet }) => sheet === "Fans");
    const { message } = await hostError(() => markFindings(findings));
    expect(message).toContain("Boxes is one whose conditional formats Excel cannot read");
    bridge.sendMessageToHost = sendMessageToHost;
    const ids = await idsOn("Fans");
    expect(ids.length).toBe(3 + new Set(onFans.map(({ severity }) => severity)).size);
    await markFindings(onFans);
    expect(await idsOn("Fans")).toEqual(ids);
  });

  it("go as a set", async () => {
    const { findings, marks } = await demoFindings();
    expect(await hasMarks()).toBe(false);
    await markFindings(findings);
    expect(await hasMarks()).toBe(true);
    await clearMarks();
    expect(await hasMarks()).toBe(false);
    expect(marks("K3")).toBeNull();
  });

  it("take the place of those made before", async () => {
    const { findings, marks } = await demoFindings();
    await markFindings(findings);
    expect(await markFindings([finding("Fans", "A9", "missing")])).toBe(1);
    expect(marks("K3")).toBeNull();
    expect((await rulesOn("Fans")).length).toBe(1);
  });

  it("are known as ours on a sheet that was renamed since", async () => {
    const { findings } = await demoFindings();
    await markFindings(findings);
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Dwellings").name = "Lots";
      await context.sync();
    });
    await clearMarks();
    expect(await rulesOn("Lots")).toEqual([]);
  });

  it("are put on thousands of cells at once", async () => {
    const workbook = Workbook.create();
    workbook.addSheet("Data", { rows: [line("a")] });
    const host = hostOf(workbook);
    const many = Array.from({ length: 6_000 }, (_, i) => finding("Data", `B${2 * i + 1}`, "wrong"));
    expect(await markFindings(many)).toBe(6_000);
    expect([0, 1, 11_998].map((row) => host.marksAt("Data", row, 1) !== null)).toEqual([
      true,
      false,
      true,
    ]);
    await clearMarks();
    expect(await hasMarks()).toBe(false);
  });

  it("pass over a protected sheet and a deleted one, and say so", async () => {
    const { findings, marks } = await demoFindings();
    await Excel.run(async (context) => {
      const { worksheets } = context.workbook;
      worksheets.getItem("Boxes").protection.protect();
      worksheets.getItem("Dwellings").delete();
      await context.sync();
    });
    const { code, message } = await hostError(() => markFindings(findings));
    const count = new Set(findings.filter((f) => f.sheet === "Fans").map((f) => f.cell)).size;
    expect(code).toBe("NotAllMarked");
    expect(message).toBe(
      `${count} cells are marked. Not marked: Boxes is protected; Dwellings is no longer there. To mark a protected sheet, unprotect it on the Review tab, then mark again.`,
    );
    expect(marks("K3")).not.toBeNull();
  });

  it("that a protected sheet keeps are told of", async () => {
    const { findings, marks } = await demoFindings();
    await markFindings(findings);
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Boxes").protection.protect();
      await context.sync();
    });
    const { message } = await hostError(clearMarks);
    expect(message).toContain("Marks are left on Boxes, which is protected");
    expect(marks("K3")).toBeNull();
    expect(await hasMarks()).toBe(true);
  });
});

function finding(sheet: string, cell: string, severity: Severity): Finding {
  const { row } = placeOf(cell);
  const words = { about: "", what: "", effect: "", mend: "" };
  return { kind: "cell-error", severity, sheet, cell, row, cells: [{ sheet, cell }], ...words };
}

function letters(col: number): string {
  return col < 26
    ? String.fromCharCode(65 + col)
    : `${letters(Math.floor(col / 26) - 1)}${letters(col % 26)}`;
}
