import { describe, expect, it } from "vitest";
import { connect } from "../../src/desk/host";
import { type ReadProgress, readWorkbook } from "../../src/excel";
import { checkJob } from "../../src/job";
import { loadAudit, readable } from "../../src/pane/session/load-audit";
import { Workbook } from "../../src/workbook";
import { hostOf } from "../desk-host/desk";
import { installOffice } from "../desk-host/install-office";
import { answerKey, today } from "./demo";
import { answerWithError, demoHost, hostOfEdited, line } from "./hosts";
import { largeJob } from "./large-job";

const sorted = (places: readonly { sheet: string; cell: string; kind: string }[]) =>
  places.map(({ sheet, cell, kind }) => `${sheet}!${cell} ${kind}`).sort();

describe("a job read from an open workbook", () => {
  it("gives the findings of the answer key", async () => {
    demoHost();
    const { file } = await readWorkbook();
    const loaded = await loadAudit();
    const { findings } = checkJob(readable(file, loaded), today, loaded.further);
    expect(sorted(findings)).toEqual(sorted(answerKey()));
  });

  it("has values, formulas without the equals sign, and error values", async () => {
    const host = demoHost();
    const { file } = await readWorkbook();
    const fans = file.sheets.find(({ name }) => name === "Fans");
    expect(fans?.value(2, 15)).toBe(host.value("Fans", 2, 15));
    expect(fans?.formula(2, 15)).toBe("FANROW.FLOW(J3,N3,O3,Job!$B$5)");
    expect(fans?.formula(2, 0)).toBeNull();
    expect(fans?.value(73, 16)).toEqual({ error: "#REF!" });
    expect(fans?.value(10, 10)).toBeNull();
    expect(fans?.value(500, 3)).toBeNull();
  });

  it("takes at most 3 round trips and one for every 4,000 rows", async () => {
    const host = demoHost();
    const told: ReadProgress[] = [];
    const reading = await readWorkbook((progress) => told.push(progress));
    const rows = reading.file.sheets.reduce((sum, { rowCount }) => sum + rowCount, 0);
    expect(reading.trips).toBe(host.requestCount);
    expect(reading.trips).toBeLessThanOrEqual(Math.floor(3 + rows / 4_000));
    expect(told.at(-1)).toEqual({ done: rows, total: rows });
  });

  it("keeps to that with 20,000 fans, and misses no row", async () => {
    const fans = 20_000;
    const host = hostOf(largeJob(fans));
    const told: ReadProgress[] = [];
    const reading = await readWorkbook((progress) => told.push(progress));
    const { sheets } = reading.file;
    expect(reading.trips).toBe(host.requestCount);
    expect(reading.trips).toBeLessThanOrEqual(3 + fans / 4_000);
    for (const sheet of sheets) {
      const info = host.sheets.find(({ name }) => name === sheet.name);
      expect([sheet.rowCount, sheet.colCount]).toEqual([info?.rowCount, info?.colCount]);
      for (let row = 0; row < sheet.rowCount; row += 1 + (row % 97)) {
        const col = row % sheet.colCount;
        expect(sheet.value(row, col)).toEqual(host.value(sheet.name, row, col));
      }
    }
    const errors = sheets.flatMap((sheet) =>
      Array.from({ length: sheet.rowCount }, (_, row) => sheet.value(row, 16)),
    );
    // One of the demo's rows holds an error, and it comes back in every copy.
    expect(errors.filter((value) => typeof value === "object" && value !== null).length).toBe(
      Math.floor((fans - 73) / 104) + 1,
    );
    const done = told.map((progress) => progress.done);
    expect(done).toEqual([...done].sort((a, b) => a - b));
    expect(done.at(-1)).toBe(told[0]?.total);
  });

  it("tells the number format of a single cell far down, and those beside it", async () => {
    const book = largeJob(3_000);
    const fans = book.sheet("Fans");
    const style = book.restyle(fans?.cell(2_700, 15)?.style ?? 0, { numberFormat: '"52"' });
    fans?.setStyle(2_700, 15, style);
    hostOf(book);
    const read = (await readWorkbook()).file.sheets.find(({ name }) => name === "Fans");
    const formats = [2_699, 2_700, 2_701].map((row) => read?.numberFormat?.(row, 15));
    expect(formats).toEqual([2_699, 2_700, 2_701].map((row) => fans?.numberFormat(row, 15)));
    expect(formats[1]).toBe('"52"');
  });

  it("tells texts that look like errors from errors, in later blocks too", async () => {
    const workbook = Workbook.create();
    const filler = Array.from({ length: 2_500 }, (_, i) => line(i));
    const tail = [line("#N/A"), line({ error: "#N/A" }), line("#1"), line({ error: "#DIV/0!" })];
    workbook.addSheet("Data", { rows: [...filler, ...tail] });
    workbook.addSheet("Other", { rows: [...tail] });
    hostOf(workbook);
    const { file } = await readWorkbook();
    for (const [name, top] of [
      ["Data", 2_500],
      ["Other", 0],
    ] as const) {
      const sheet = file.sheets.find((each) => each.name === name);
      expect([0, 1, 2, 3].map((row) => sheet?.value(top + row, 0))).toEqual([
        "#N/A",
        { error: "#N/A" },
        "#1",
        { error: "#DIV/0!" },
      ]);
    }
  });

  it("reads a sheet that is wide and does not begin at A1", async () => {
    const workbook = Workbook.create();
    const blank = line(...Array.from({ length: 203 }, () => null));
    const rows = Array.from({ length: 2_100 }, (_, r) =>
      line(null, null, null, ...Array.from({ length: 200 }, (_, c) => r * 1_000 + c)),
    );
    workbook.addSheet("Wide", { rows: [blank, blank, ...rows] });
    hostOf(workbook);
    const { file } = await readWorkbook();
    const sheet = file.sheets.find(({ name }) => name === "Wide");
    expect([sheet?.rowCount, sheet?.colCount]).toEqual([2_102, 203]);
    for (const [row, col] of [
      [2, 3],
      [2, 70],
      [3, 66],
      [2_101, 3],
      [2_101, 202],
      [1_000, 63],
      [1_000, 64],
    ] as const)
      expect(sheet?.value(row, col)).toBe((row - 2) * 1_000 + col - 3);
    expect(sheet?.value(1, 3)).toBeNull();
    expect(sheet?.value(2, 2)).toBeNull();
  });

  it("reads on in smaller blocks where rows turn out larger than the first ones", async () => {
    const workbook = Workbook.create();
    const short = Array.from({ length: 2_200 }, (_, i) => line(`short ${i}`));
    const long = Array.from({ length: 6_000 }, (_, i) => line(`${i} `.padEnd(1_500, "x")));
    workbook.addSheet("Notes", { rows: [...short, ...long] });
    hostOf(workbook);
    const { file } = await readWorkbook();
    const sheet = file.sheets[0];
    expect(sheet?.value(2_199, 0)).toBe("short 2199");
    for (const row of [2_200, 5_000, 8_199])
      expect(String(sheet?.value(row, 0)).startsWith(`${row - 2_200} x`)).toBe(true);
  });

  it("reads first rows that are too large at once one by one", async () => {
    const workbook = Workbook.create();
    const rows = Array.from({ length: 400 }, (_, i) => line(`${i} `.padEnd(30_000, "x")));
    workbook.addSheet("Notes", { rows });
    hostOf(workbook);
    const { file } = await readWorkbook();
    expect(String(file.sheets[0]?.value(399, 0)).startsWith("399 x")).toBe(true);
  });

  it("tells text in the colour of its ground, in the first rows and far below", async () => {
    const workbook = Workbook.create();
    const style = (color: string, fill?: string) =>
      workbook.addStyle({ color, ...(fill && { fill }) });
    const [white, onBlue, blueOnBlue] = [
      style("FFFFFF"),
      style("FFFFFF", "1F4E78"),
      style("1F4E78", "1F4E78"),
    ];
    const rows = Array.from({ length: 9_000 }, () => line(1, 2, 3, 4));
    workbook.addSheet("Long", { rows });
    workbook.addSheet("White", { rows: [line(1, 2)] });
    const [long, all] = workbook.sheets;
    for (let col = 0; col < 4; col++) long?.setStyle(0, col, onBlue);
    long?.setStyle(3, 1, white);
    long?.setStyle(4, 2, blueOnBlue);
    long?.setStyle(8_000, 3, white);
    for (const col of [0, 1]) all?.setStyle(0, col, white);
    hostOf(workbook);
    const { file, trips } = await readWorkbook();
    const unseen = file.sheets.map((sheet) =>
      Array.from({ length: sheet.rowCount * 4 }, (_, i) => [Math.floor(i / 4), i % 4] as const)
        .filter(([row, col]) => sheet.isUnseen?.(row, col))
        .map(String),
    );
    expect(unseen[0]).toEqual(["3,1", "4,2", "8000,3"]);
    expect(unseen[1]?.slice(0, 2)).toEqual(["0,0", "0,1"]);
    expect(trips).toBeLessThanOrEqual(3 + 9_000 / 4_000);
  });

  it("has an empty sheet as one without rows", async () => {
    const workbook = Workbook.create();
    workbook.addSheet("Empty", { rows: [] });
    hostOf(workbook);
    const { file, notes } = await readWorkbook();
    expect(file.sheets.map(({ name, rowCount }) => [name, rowCount])).toEqual([["Empty", 0]]);
    expect(notes).toEqual([]);
  });
});

describe("what a reader should know", () => {
  const rows = [line("a", "b", "c"), line(1, 2, 3), line(4, 5, 6)];

  it("names hidden rows and columns, merged cells and hidden sheets", async () => {
    hostOfEdited({ Plain: rows, Odd: rows, Away: rows }, (part, text) => {
      if (part === "xl/workbook.xml")
        return text.replace('name="Away"', 'name="Away" state="hidden"');
      if (part !== "xl/worksheets/sheet2.xml") return text;
      return text
        .replace('<row r="2"', '<row r="2" hidden="1"')
        .replace(
          "<sheetData>",
          '<cols><col min="2" max="2" width="8" hidden="1"/></cols><sheetData>',
        )
        .replace("</sheetData>", '</sheetData><mergeCells><mergeCell ref="A2:A3"/></mergeCells>');
    });
    const { notes } = await readWorkbook();
    expect(notes).toEqual([
      "Odd has hidden rows. They are checked like the others.",
      "Odd has hidden columns. They are read like the others.",
      "Odd has merged cells (A2:A3). Only the first cell of a merge holds a value.",
      "Away is a hidden sheet. It is read like the others.",
    ]);
  });

  it("knows every hidden row of 20,000 and 600 merges, of which Excel cuts the addresses off", async () => {
    const workbook = Workbook.create();
    const sheet = workbook.addSheet("The fans of phase 2", {
      rows: Array.from({ length: 20_000 }, (_, i) => line(i, "a", "b")),
    });
    for (let row = 1; row < 20_000; row += 2) (sheet.hiddenRows as Set<number>).add(row);
    (sheet.hiddenCols as Set<number>).add(1);
    const merges = Array.from({ length: 600 }, (_, i) => `B${2 * i + 1}:C${2 * i + 1}`);
    sheet.arrange({ merges });
    hostOf(workbook);
    const { file, notes, trips } = await readWorkbook();
    const [read] = file.sheets;
    const hidden = Array.from({ length: 20_000 }, (_, row) => read?.hiddenRow?.(row));
    expect(hidden.findIndex((each, row) => each !== (row % 2 === 1))).toBe(-1);
    expect([0, 1, 2].map((col) => read?.hiddenCol?.(col))).toEqual([false, true, false]);
    expect(notes.at(-1)).toContain("(B1:C1, B3:C3, B5:C5 and 597 more)");
    // Pieces of 64 rows, 200 of them a trip, for the hidden rows and for the merges.
    expect(trips).toBeLessThanOrEqual(3 + 4 + 2 * 2);
  });

  it("names a filter, a protected sheet and manual calculation", async () => {
    hostOfEdited({ Data: rows }, (part, text) =>
      part === "xl/worksheets/sheet1.xml"
        ? text
            .replace('<row r="2"', '<row r="2" hidden="1"')
            .replace(
              "</sheetData>",
              '</sheetData><sheetProtection sheet="1"/><autoFilter ref="A1:C3"><filterColumn colId="0"><filters><filter val="4"/></filters></filterColumn></autoFilter>',
            )
        : text,
    );
    await Excel.run(async (context) => {
      context.workbook.application.calculationMode = "Manual";
      await context.sync();
    });
    const { notes } = await readWorkbook();
    expect(notes).toEqual([
      "Calculation is set to manual: press F9 before you trust the values.",
      "Data is protected. It can be checked; to mend or mark cells there, unprotect it first.",
      "Data is filtered. The rows that the filter hides are checked too.",
    ]);
  });

  it("names a workbook that is open for reading only", async () => {
    const host = demoHost();
    const { onMessage } = host;
    host.onMessage = (text) => onMessage(text.replace(/"readOnly":false/i, '"ReadOnly":true'));
    expect((await readWorkbook()).notes).toEqual([
      "The workbook is open for reading only: save a copy to keep what you change.",
    ]);
  });

  it("does without the merged cells where Excel will not list them", async () => {
    const host = demoHost();
    const bridge = connect(installOffice().OfficeExtension, host);
    const { sendMessageToHost } = bridge;
    bridge.sendMessageToHost = (text) => {
      if (!text.includes("GetMergedAreasOrNullObject")) sendMessageToHost(text);
      else answerWithError(bridge, text, "GeneralException", "Too many areas.");
    };
    const { file, notes } = await readWorkbook();
    expect(sorted(checkJob(file, today).findings).length).toBe(answerKey().length);
    expect(notes).toEqual([
      "Merged cells could not be listed, as a rule because there are very many. Only the first cell of a merge holds a value.",
    ]);
  });

  it("knows a workbook that counts its days from 1904", async () => {
    demoHost();
    expect((await readWorkbook()).file.dateOffset).toBe(0);
    hostOfEdited({ Data: rows }, (part, text) => {
      if (part !== "xl/workbook.xml") return text;
      return text
        .replace(/<workbookPr[^>]*\/>/, "")
        .replace("<sheets>", '<workbookPr date1904="1"/><sheets>');
    });
    expect((await readWorkbook()).file.dateOffset).toBe(1_462);
  });
});

describe("a workbook read again after an edit", () => {
  it("is read once the user has left the cell being edited", async () => {
    const host = demoHost();
    host.beginEdit();
    const waiting = readWorkbook(() => {}, { waitsForEdit: true });
    setTimeout(() => host.endEdit(), 30);
    const { file, trips } = await waiting;
    expect([file.sheets.length, trips]).toEqual([4, 3]);
  });
});

describe("a sheet with a stray cell far from all others", () => {
  it("is read as far as a job reaches, and says so", async () => {
    hostOfEdited({ Fans: [line("Dwelling"), line("Lot 1")] }, (part, text) =>
      part.endsWith("sheet1.xml")
        ? text.replace(
            "</sheetData>",
            '<row r="1048576"><c r="XFD1048576"><v>1</v></c></row></sheetData>',
          )
        : text,
    );
    const { file, notes } = await readWorkbook();
    const [fans] = file.sheets;
    expect([fans?.rowCount, fans?.colCount, fans?.value(1, 0)]).toEqual([1_000, 64, "Lot 1"]);
    expect(notes.join()).toContain("Fans is used as far as XFD1048576");
  });
});
